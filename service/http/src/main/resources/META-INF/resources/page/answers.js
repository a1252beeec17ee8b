// Asks the service for the report of a plan and puts its parts beside the fields that they answer;
// what the service cannot take is told beside the field that it names.

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
export function tell(problem, fields, list) {
  const errors = problem.errors ?? [];
  const elsewhere = errors.filter((error) => !beside(error, fields));
  if (errors.length === 0) {
    elsewhere.push({ pointer: "", detail: problem.detail });
  }
  elsewhere.forEach((error) => {
    const item = document.createElement("li");
    item.textContent = [error.pointer, said(error)].filter((text) => text).join(": ");
    list.querySelector("ul").append(item);
  });
  list.hidden = elsewhere.length === 0;
  return errors.length;
}

function beside(error, fields) {
  const element = fields.nearest(error.pointer);
  const fault = element?.querySelector(
    element.matches("fieldset") ? ":scope > .fault" : ".fault",
  );
  if (!fault) {
    return false;
  }
  fault.textContent = [fault.textContent, said(error)].filter((text) => text).join(" ");
  fault.hidden = false;
  const within = error.pointer.slice(element.dataset.pointer.length + 1);
  const inputs = element.querySelectorAll("input, select");
  const input = /^\d+$/.test(within) && inputs[Number(within)] ? inputs[Number(within)] : inputs[0];
  input?.setAttribute("aria-invalid", "true");
  input?.setAttribute("aria-describedby", fault.id);
  for (let up = element.closest("details"); up; up = up.parentElement.closest("details")) {
    up.open = true;
  }
  return true;
}

function said(error) {
  return error.allowed && !error.detail.includes(error.allowed)
    ? `${error.detail} (${error.allowed})`
    : error.detail;
}
