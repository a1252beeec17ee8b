// The planner's page: keeps the plan, has the service work it, and shows what comes of it.

import { ask, clear, place, tell } from "./answers.js";
import { Fields } from "./fields.js";
import { packed, unpacked } from "./plan.js";
import { startStudies } from "./studies.js";

const WAIT = 350;
const AGAIN = 1500;

/** How many figures follow the reader down a small screen. */
const BRIEF = 3;

/** A change that makes no entry of its own in the browser's history. */
const SAME_ENTRY = "same entry";

const form = document.getElementById("plan-form");
const status = document.getElementById("status");
const problems = document.getElementById("problems");
const old = document.getElementById("old");
const brief = document.getElementById("brief");
const freshAsked = document.getElementById("fresh-asked");
const demo = JSON.parse(document.getElementById("demo").textContent);
const says = JSON.parse(document.getElementById("says").textContent);

let timer = 0;
let asking = null;
let counted = 0;

let edited = SAME_ENTRY;
let editedBefore = null;
let address = location.hash;
let listed = null;

const fields = new Fields(form, later, stations);
const studies = startStudies(() => fields.plan, () => fields.customary, says);

/** The listed stations by id; none if the list does not come. */
function stations() {
  listed ??= fetch("/v1/climates")
    .then((response) => response.json())
    .then((answer) => new Map(answer.items.map((station) => [station.id, station])))
    .catch(() => {
      listed = null;
      return new Map();
    });
  return listed;
}

/** A text with its places filled. */
function said(key, places = {}) {
  return says[key].replace(/\{(\w+)\}/g, (all, name) => places[name] ?? all);
}

function tellStatus(text, bad = false) {
  status.textContent = text;
  status.classList.toggle("bad", bad);
}

/** Enters a state of the page; in all but one, the answer shown is not that of the plan shown. */
function enter(state) {
  document.body.dataset.state = state;
  old.hidden = state === "worked";
}

function later(pointer) {
  edited = pointer;
  enter("changed");
  studies.stale();
  clearTimeout(timer);
  timer = setTimeout(work, WAIT);
}

/** Has the plan worked; what was asked before is given up. */
async function work() {
  clearTimeout(timer);
  asking?.abort();
  const mine = new AbortController();
  asking = mine;
  const count = ++counted;
  enter("working");
  tellStatus(said("page.working"));
  try {
    await remember(count);
    const answer = await ask(fields.plan, fields.customary, mine.signal);
    if (count !== counted) {
      return;
    }
    if (answer.busy) {
      tellStatus(said("page.busy"));
      timer = setTimeout(work, AGAIN);
      return;
    }
    clear(form, problems);
    if (answer.problem) {
      const faults = tell(answer.problem, fields, problems, says);
      tellStatus(said("page.problems", { count: faults }), true);
      enter("problems");
    } else {
      place(answer.report, document);
      inBrief();
      kept();
      tellStatus(said("page.worked"));
      enter("worked");
    }
  } catch (failure) {
    if (failure.name !== "AbortError" && count === counted) {
      tellStatus(said("page.offline"), true);
      enter("offline");
    }
  }
}

/** The figures that follow the reader down a small screen. */
function inBrief() {
  const figures = [...document.querySelectorAll("#shortly dl div")].slice(0, BRIEF);
  brief.textContent = figures
    .map((figure) => figure.querySelector("dd").textContent.trim())
    .join(" \u00b7 ");
}

/**
 * The plan stands in the page's address, which the browser keeps and nobody else is sent. Each
 * change makes an entry of the browser's history, so that Back recovers what was there before;
 * what is typed into one field makes one entry.
 */
async function remember(count) {
  const units = fields.customary ? "&u=us" : "";
  const text = `#p=${await packed(fields.plan)}${units}`;
  if (count !== counted) {
    return;
  }
  if (text !== location.hash) {
    const same = edited === SAME_ENTRY || (edited !== null && edited === editedBefore);
    history[same ? "replaceState" : "pushState"](null, "", text);
  }
  editedBefore = edited === SAME_ENTRY ? editedBefore : edited;
  address = text;
}

/** What the page has no fields for stays in the plan, and is told. */
function kept() {
  const names = [];
  if (fields.plan.given) {
    names.push("given");
  }
  if (fields.plan.site?.hours) {
    names.push("site.hours");
  }
  const note = document.getElementById("kept");
  note.hidden = names.length === 0;
  note.textContent = names.length === 0 ? "" : said("form.kept", { names: names.join(", ") });
}

function show(plan, another = true) {
  clear(form, problems);
  fields.show(structuredClone(plan), another);
  kept();
}

function measure(customary) {
  fields.measure(customary);
  form.querySelectorAll('input[name="units"]').forEach((choice) => {
    choice.checked = (choice.value === "us-customary") === customary;
  });
}

/** The plan and units of the page's address; the demo if it holds none. */
async function fromAddress(another) {
  const parts = new URLSearchParams(location.hash.slice(1));
  measure(parts.get("u") === "us");
  try {
    show(parts.has("p") ? await unpacked(parts.get("p")) : demo, another);
  } catch {
    show(demo);
    parts.delete("p");
    tellStatus(said("page.not-a-plan"), true);
  }
  return parts.has("p") || fields.customary;
}

function download(content, type, name) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), AGAIN);
}

function fileName(ending) {
  const name = (fields.plan.name ?? "plan").toLowerCase().replace(/[^a-z0-9]+/g, "-");
  return `${name.slice(0, 40).replace(/^-|-$/g, "") || "plan"}.${ending}`;
}

async function saveTable() {
  try {
    const response = await fetch(
      `/v1/estimates/loop?units=${fields.customary ? "us-customary" : "si"}`,
      {
        method: "POST",
        headers: { "Content-Type": "application/json", Accept: "text/csv" },
        body: JSON.stringify(fields.plan),
      },
    );
    if (response.ok) {
      download(await response.text(), "text/csv", fileName("csv"));
    } else {
      await work();
      toProblem();
    }
  } catch {
    await work();
  }
}

/** Takes the reader to the first field that cannot be taken. */
function toProblem() {
  if (document.body.dataset.state === "problems") {
    const field = form.querySelector('[aria-invalid="true"]') ?? problems;
    field.scrollIntoView({ block: "center" });
    field.focus({ preventScroll: true });
  }
}

async function openFile(file) {
  try {
    const plan = JSON.parse(await file.text());
    if (typeof plan !== "object" || plan === null || Array.isArray(plan)) {
      throw new SyntaxError("no object");
    }
    show(plan);
    edited = null;
    await work();
    if (document.body.dataset.state === "worked") {
      tellStatus(said("page.opened"));
    }
  } catch {
    tellStatus(said("page.not-a-plan"), true);
  }
}

/**
 * The report is asked for as a form is sent, with the whole plan in one field. A plan that cannot
 * be worked has no report: the reader is taken to what is wrong with it.
 */
function openReport(event) {
  event.preventDefault();
  if (document.body.dataset.state === "problems") {
    tellStatus(said("page.no-report"), true);
    toProblem();
    return;
  }
  if (document.body.dataset.state === "offline") {
    work();
    return;
  }
  const sent = document.createElement("form");
  sent.method = "post";
  sent.action = "/report";
  sent.target = "_blank";
  const values = {
    plan: JSON.stringify(fields.plan),
    units: fields.customary ? "us-customary" : "si",
  };
  Object.entries(values).forEach(([name, value]) => {
    const input = document.createElement("input");
    input.type = "hidden";
    input.name = name;
    input.value = value;
    sent.append(input);
  });
  document.body.append(sent);
  sent.submit();
  sent.remove();
}

async function listNumbers() {
  const list = document.getElementById("coefficients");
  if (list && list.childElementCount === 0) {
    const answer = await (await fetch("/v1/coefficients")).json();
    answer.items.forEach((item) => {
      const option = document.createElement("option");
      option.value = item.id;
      option.label = `${item.symbol}: ${item.value} ${item.unit}`;
      list.append(option);
    });
  }
}

document.querySelectorAll(".scripted").forEach((element) => {
  element.hidden = false;
});
document.querySelectorAll(".unscripted").forEach((element) => {
  element.hidden = true;
});
form.addEventListener("submit", openReport);
document.getElementById("units").addEventListener("change", (event) => {
  measure(event.target.value === "us-customary");
  studies.stale();
  edited = SAME_ENTRY;
  work();
});
document.getElementById("save").addEventListener("click", () => {
  download(JSON.stringify(fields.plan, null, 2), "application/json", fileName("json"));
  tellStatus(said("page.saved"));
});
document.getElementById("open").addEventListener("click", () => {
  document.getElementById("file").click();
});
document.getElementById("file").addEventListener("change", (event) => {
  if (event.target.files.length > 0) {
    openFile(event.target.files[0]);
    event.target.value = "";
  }
});
document.getElementById("table").addEventListener("click", saveTable);
document.getElementById("fresh").addEventListener("click", () => {
  freshAsked.showModal();
});
document.getElementById("fresh-no").addEventListener("click", () => freshAsked.close());
document.getElementById("fresh-yes").addEventListener("click", () => {
  freshAsked.close();
  show(demo);
  edited = null;
  work();
});
document
  .querySelector('[data-kind="overrides"]')
  ?.addEventListener("focusin", listNumbers, { once: true });
window.addEventListener("hashchange", async () => {
  if (location.hash === "" || /[#&][pu]=/.test(location.hash)) {
    await fromAddress(false);
    edited = SAME_ENTRY;
    editedBefore = null;
    studies.stale();
    await work();
  } else {
    // a jump within the page; the address goes on holding the plan
    history.replaceState(null, "", location.pathname + address);
  }
});
window.addEventListener("beforeprint", () => {
  document.querySelectorAll("details.fold, details.behind, details.more").forEach((details) => {
    details.dataset.was = String(details.open);
    details.open = true;
  });
});
window.addEventListener("afterprint", () => {
  document.querySelectorAll("details[data-was]").forEach((details) => {
    details.open = details.dataset.was === "true";
    delete details.dataset.was;
  });
});

inBrief();
if (await fromAddress(true)) {
  await work();
} else {
  enter("worked");
}
