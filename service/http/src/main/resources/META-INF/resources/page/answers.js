// Asks the service for the report of a plan and puts its parts beside the fields that they answer;
// what the service cannot take is told beside the field that it names.

import { ambiguous, bound, unitOf } from "./units.js";

const ESTIMATE = "/v1/estimates/loop";

/** What the service says of a plan: its report, or a problem document. */
export async function ask(plan, customary, signal) {
  const response = await fetch(`${ESTIMATE}?units=${customary ? "us-customary" : "si"}`, {
    method: "POST",
    headers: { "Content-Type": "application/json", Accept: "text/html" },
    body: JSON.stringify(plan),
    signal,
  });
  if (response.ok) {
    return { report: new DOMParser().parseFromString(await response.text(), "text/html") };
  }
  return { problem: await response.json(), busy: response.status === 503 };
}

/** Puts the parts of a report into the places of the page. */
export function place(report, page) {
  page.querySelectorAll("[data-slot]").forEach((slot) => {
    const part = report.querySelector(`[data-part="${slot.dataset.slot}"]`);
    const open = [...slot.querySelectorAll("details[open]")].map(nameOf);
    slot.replaceChildren();
    if (part) {
      const mine = document.importNode(part, true);
      mine.querySelectorAll("div.behind, div.more").forEach((long) => fold(long, open));
      slot.append(mine);
    }
    const outer = slot.closest("details.fold");
    if (outer) {
      outer.hidden = !part;
    }
  });
}

/** What a fold is told apart by: its place and its kind. */
function nameOf(details) {
  return `${details.parentElement.id}.${details.className}`;
}

/** What is long is shown when it is asked for. */
function fold(long, open) {
  const above = long.parentElement;
  const details = document.createElement("details");
  details.className = long.className;
  const summary = document.createElement("summary");
  summary.textContent = long.dataset.summary;
  const caption = document.createElement("span");
  caption.className = "unseen";
  caption.textContent = `: ${above.querySelector(":scope > figcaption, :scope > h2").textContent}`;
  summary.append(caption);
  details.append(summary, ...long.childNodes);
  long.replaceWith(details);
  details.open = open.includes(nameOf(details));
}

/** Takes every fault away. */
export function clear(form, list) {
  form.querySelectorAll(".fault").forEach((fault) => {
    fault.hidden = true;
    fault.textContent = "";
  });
  form.querySelectorAll("[aria-invalid]").forEach((field) => {
    field.removeAttribute("aria-invalid");
    field.removeAttribute("aria-describedby");
  });
  list.hidden = true;
  list.querySelector("ul").replaceChildren();
}

/**
 * Tells every fault of a problem document beside its field; what has no field is listed.
 *
 * @returns how many faults there are
 */
export function tell(problem, fields, list, says) {
  const errors = problem.errors ?? [];
  const elsewhere = errors.filter((error) => !beside(error, fields, says));
  if (errors.length === 0) {
    elsewhere.push({ pointer: "", detail: problem.detail });
  }
  elsewhere.forEach((error) => {
    const item = document.createElement("li");
    const element = fields.nearest(error.pointer);
    item.textContent = element
      ? said(error, element, null, fields, says)
      : [error.pointer, withAllowed(error)].filter((text) => text).join(": ");
    list.querySelector("ul").append(item);
  });
  list.hidden = elsewhere.length === 0;
  return errors.length;
}

function beside(error, fields, says) {
  const element = fields.nearest(error.pointer);
  if (!element) {
    return false;
  }
  const within = error.pointer.slice(element.dataset.pointer.length + 1);
  const place = element.dataset.kind === "overrides" ? overridden(element, within) : element;
  const fault = place?.querySelector(place.matches("fieldset") ? ":scope > .fault" : ".fault");
  if (!fault) {
    return false;
  }
  const one = inputAt(place, within);
  const input = one ?? place.querySelector(".amount") ?? place.querySelector("input, select");
  const text = said(error, element, one, fields, says);
  fault.textContent = [fault.textContent, text].filter((part) => part).join(" ");
  fault.hidden = false;
  input?.setAttribute("aria-invalid", "true");
  if (fault.id) {
    input?.setAttribute("aria-describedby", fault.id);
  }
  for (let up = element.closest("details"); up; up = up.parentElement.closest("details")) {
    up.open = true;
  }
  return true;
}

/** The one of several inputs that the rest of a pointer names; null for the whole field. */
function inputAt(element, within) {
  const several = element.matches(".twelve, .sectors") && /^\d+$/.test(within);
  return several ? (element.querySelectorAll("input")[Number(within)] ?? null) : null;
}

/** The entry that sets a number by its id. */
function overridden(list, id) {
  return [...list.querySelectorAll(":scope > .entries > .entry")].find(
    (entry) => entry.querySelector(".key").value.trim() === id,
  );
}

/** What a person calls a field. */
function labelOf(element) {
  const label = element.querySelector("label, legend").cloneNode(true);
  label.querySelectorAll(".unit, .unseen, input, select").forEach((part) => part.remove());
  return label.textContent.trim();
}

/**
 * A violation in the words and units of the field beside which it is shown.
 *
 * @param input the one of several inputs that is at fault; null for the whole field
 */
function said(error, element, input, fields, says) {
  const params = error.params ?? {};
  const place = input?.closest("label")?.textContent.trim();
  const label = place ? `${labelOf(element)}, ${place}` : labelOf(element);
  const fill = (key, places = {}) =>
    says[key].replace(/\{(\w+)\}/g, (all, name) => ({ label, ...places })[name] ?? all);
  if (typeof params.low === "number" && typeof params.high === "number" && element.dataset.times) {
    const unit = unitOf(element);
    const end = (value, inward) => bound(value, unit, fields.customary, inward);
    const name = fields.customary ? unit.us : unit.si;
    return fill("fault.range", {
      low: end(params.low, Math.ceil),
      high: [end(params.high, Math.floor), name].filter((part) => part).join("\u00a0"),
    });
  }
  if (error.code === "json.wrong-type" && element.dataset.times) {
    const typed = String((input ?? element.querySelector("input")).value).trim();
    return ambiguous(typed)
      ? fill("fault.thousands", {
          typed,
          thousands: typed.replace(",", ""),
          decimal: String(Number(typed.replace(",", "."))),
        })
      : fill("fault.number", { typed });
  }
  if (error.code === "loop.missing") {
    return fill("fault.missing");
  }
  if (params.first && params.second) {
    const named = (name) => {
      const found = fields.nearest(`${error.pointer}/${name}`);
      return found && found !== element ? labelOf(found) : name;
    };
    return fill("fault.one-of", { first: named(params.first), second: named(params.second) });
  }
  return withAllowed({
    ...error,
    detail: params.field ? error.detail.replace(params.field, label) : error.detail,
  });
}

function withAllowed(error) {
  return error.allowed && !error.detail.includes(error.allowed)
    ? `${error.detail} (${error.allowed})`
    : error.detail;
}
