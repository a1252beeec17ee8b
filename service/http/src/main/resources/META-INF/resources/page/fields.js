// Binds the form's fields to the plan. The server wrote every field with its pointer and units;
// nothing of them is repeated here.

import { drop, get, put } from "./plan.js";
import { parsed, short, shown, taken, unitOf } from "./units.js";

const NEW = /__n__/g;

const SITE = "/site";
const STATION = "/site/climate/id";
const NORMALS = "/site/climate/monthly";
const RAIN = "/site/climate/rainMm";

/** What a station brings with it: each is a field of the site and of the list of stations. */
const PLACE = ["latitudeDeg", "longitudeDeg", "elevationM"];

/** What the page has fields for, so that the rest of a plan can be told of. */
export class Fields {
  /**
   * @param form the form
   * @param changed is called with the pointer of what was changed
   * @param stations gives a promise of the listed stations by id
   */
  constructor(form, changed, stations) {
    this.form = form;
    this.changed = changed;
    this.stations = stations;
    this.station = null;
    this.plan = {};
    this.customary = false;
    this.untouched = null;
    this.#forget();
    form.addEventListener("focusin", (event) => this.#entered(event.target));
    // one event for each edit: a tick box that was handled on change as well would be handled twice
    form.addEventListener("input", (event) => this.#typed(event.target));
    form.addEventListener("click", (event) => this.#pressed(event.target));
    form.addEventListener("paste", (event) => this.#pasted(event));
  }

  /**
   * Shows a plan.
   *
   * @param plan the plan
   * @param another whether it is another plan, so that what was set aside from the last one goes
   */
  show(plan, another) {
    this.plan = plan;
    this.untouched = null;
    if (another) {
      this.#forget();
    }
    this.form
      .querySelectorAll('[data-kind="list"], [data-kind="overrides"]')
      .forEach((list) => this.#list(list));
    this.#all();
  }

  /** Shows the same plan in other units. */
  measure(customary) {
    this.customary = customary;
    this.#all();
  }

  /** The element that shows what lies at or nearest above a pointer. */
  nearest(pointer) {
    for (let at = pointer; at !== ""; at = at.slice(0, at.lastIndexOf("/"))) {
      const found = this.form.querySelector(`[data-pointer="${CSS.escape(at)}"]`);
      if (found) {
        return found;
      }
    }
    return null;
  }

  /** Drops what was unticked, removed or replaced by a station. */
  #forget() {
    this.setAside = {};
    this.removed = {};
  }

  #all() {
    this.#climate();
    this.form.querySelectorAll("[data-pointer]").forEach((element) => this.#one(element));
    this.form
      .querySelectorAll('[data-kind="list"], [data-kind="overrides"]')
      .forEach((list) => this.#undoButton(list));
  }

  #one(element) {
    const pointer = element.dataset.pointer;
    const value = get(this.plan, pointer);
    switch (element.dataset.kind) {
      case "number":
        this.#number(element, value);
        break;
      case "twelve":
      case "sectors":
        this.#twelve(element, value);
        break;
      case "months":
      case "choices":
        element.querySelectorAll("input").forEach((tick) => {
          tick.checked = (value ?? []).map(String).includes(tick.value);
        });
        break;
      case "section": {
        const there = value !== undefined && value !== null;
        element.querySelector(":scope > .has input").checked = there;
        element.querySelector(":scope > .within").hidden = !there;
        break;
      }
      case "text":
      case "choice":
      case "flag": {
        const field = element.querySelector("input, select");
        field.value = value === undefined || value === null ? "" : String(value);
        break;
      }
      default:
    }
  }

  #number(element, value) {
    const unit = unitOf(element);
    const input = element.querySelector("input");
    input.value = shown(value, unit, this.customary);
    input.placeholder = this.#pale(this.#brought(element) ?? element.dataset.usual, unit);
    element.querySelector(".typed .unit").textContent = this.customary ? unit.us : unit.si;
  }

  #twelve(element, value) {
    const unit = unitOf(element);
    element.querySelector("legend .unit").textContent = this.customary ? unit.us : unit.si;
    element.querySelectorAll("input").forEach((input, i) => {
      input.value = shown((value ?? [])[i], unit, this.customary);
      input.placeholder = this.#pale(this.#brought(element)?.[i], unit);
    });
  }

  /** What is used where a field is left open, as the text that is shown pale. */
  #pale(value, unit) {
    if (value === undefined || value === null || value === "") {
      return "";
    }
    const number = Number(value);
    return short(this.customary ? (number * unit.times) / unit.over + unit.offset : number);
  }

  /** What the named station says of a field of the place; undefined for nothing. */
  #brought(element) {
    const pointer = element.dataset.pointer;
    const name = pointer.slice(SITE.length + 1);
    if (PLACE.includes(name)) {
      return this.station?.[name];
    }
    return pointer === RAIN ? this.station?.monthly?.rainMm : undefined;
  }

  /** Own normals are asked for only where no station is named, other rain only where one is. */
  #climate() {
    const id = get(this.plan, STATION);
    this.form.querySelectorAll(`[data-pointer="${NORMALS}"]`).forEach((normals) => {
      normals.hidden = Boolean(id);
    });
    this.form.querySelectorAll(`[data-pointer="${RAIN}"]`).forEach((rain) => {
      rain.hidden = !id;
    });
    if ((this.station?.id ?? "") !== (id ?? "")) {
      this.station = null;
      this.#look(id);
    }
  }

  /** Shows the place of a station as soon as the list of stations is there. */
  async #look(id) {
    const station = id ? (await this.stations()).get(id) : undefined;
    if (station && id === get(this.plan, STATION)) {
      this.station = station;
      this.#all();
    }
  }

  #list(list) {
    const entries = list.querySelector(":scope > .entries");
    const template = list.querySelector(":scope > template");
    if (list.dataset.kind === "overrides") {
      entries.replaceChildren(
        ...Object.entries(get(this.plan, list.dataset.pointer) ?? {}).map(([id, value]) =>
          this.#override(template, id, value),
        ),
      );
      return;
    }
    const count = (get(this.plan, list.dataset.pointer) ?? []).length;
    entries.replaceChildren();
    for (let i = 0; i < count; i++) {
      const entry = template.content.firstElementChild.cloneNode(true);
      entry.dataset.index = String(i);
      entry.querySelectorAll("*").forEach((element) => {
        for (const name of ["id", "for", "name", "data-pointer"]) {
          const value = element.getAttribute(name);
          if (value !== null) {
            element.setAttribute(name, value.replace(NEW, String(i)));
          }
        }
      });
      entry.querySelectorAll(".count, .unseen").forEach((element) => {
        element.textContent = element.textContent.replace(NEW, String(i + 1));
      });
      entry.querySelectorAll(".scripted").forEach((element) => {
        element.hidden = false;
      });
      entries.append(entry);
    }
  }

  #override(template, id, value) {
    const entry = template.content.firstElementChild.cloneNode(true);
    entry.querySelector(".key").value = id;
    entry.querySelector(".amount").value = value === "" ? "" : String(value);
    return entry;
  }

  #typed(target) {
    const list = target.closest('[data-kind="overrides"]');
    if (list) {
      this.#overrides(list);
      return;
    }
    const element = target.closest("[data-pointer]");
    if (!element || element.dataset.kind === "list" || element.dataset.kind === "group") {
      return;
    }
    const pointer = element.dataset.pointer;
    if (element.dataset.kind === "section") {
      this.#section(element, target.checked);
    } else if (pointer === STATION) {
      this.#weather(target.value);
    } else {
      const value = this.#value(element, target);
      if (value === undefined) {
        drop(this.plan, pointer, (above) => this.#stays(above));
      } else {
        put(this.plan, pointer, value);
      }
    }
    this.changed(pointer);
  }

  /** Keeps what a number was before it is edited: a field shows fewer digits than the plan has. */
  #entered(target) {
    const element = target.closest('[data-kind="number"]');
    this.untouched = element
      ? { element, text: target.value, value: get(this.plan, element.dataset.pointer) }
      : null;
  }

  #numberIn(element, text) {
    if (text.trim() === "") {
      return undefined;
    }
    return this.untouched?.element === element && this.untouched.text === text
      ? this.untouched.value
      : taken(text, unitOf(element), this.customary);
  }

  #value(element, target) {
    switch (element.dataset.kind) {
      case "number":
        return this.#numberIn(element, target.value);
      case "twelve":
      case "sectors": {
        const unit = unitOf(element);
        const texts = [...element.querySelectorAll("input")].map((input) => input.value.trim());
        if (texts.every((text) => text === "")) {
          return undefined;
        }
        const before = get(this.plan, element.dataset.pointer) ?? [];
        return texts.map((text, i) => {
          if (text === "") {
            return null;
          }
          return text === shown(before[i], unit, this.customary)
            ? before[i]
            : taken(text, unit, this.customary);
        });
      }
      case "months": {
        const ticked = [...element.querySelectorAll("input:checked")].map((t) => Number(t.value));
        return ticked.length === 0 ? undefined : ticked;
      }
      case "choices": {
        const ticked = [...element.querySelectorAll("input:checked")].map((t) => t.value);
        return ticked.length === 0 ? undefined : ticked;
      }
      case "flag":
        return target.value === "" ? undefined : target.value === "true";
      default:
        return target.value === "" ? undefined : target.value;
    }
  }

  #section(element, there) {
    const pointer = element.dataset.pointer;
    if (there) {
      put(this.plan, pointer, get(this.plan, pointer) ?? this.setAside[pointer] ?? {});
    } else {
      this.setAside[pointer] = get(this.plan, pointer);
      delete this.plan[pointer.slice(1)];
    }
    element.querySelectorAll('[data-kind="list"]').forEach((list) => this.#list(list));
    this.#all();
  }

  /** Sections, entries of lists and the place itself stay when their last field is emptied. */
  #stays(pointer) {
    const element = this.form.querySelector(`[data-pointer="${CSS.escape(pointer)}"]`);
    const listed = /\/\d+$/.test(pointer);
    return listed || pointer === "/site" || pointer === "/site/climate"
      || element?.dataset.kind === "section";
  }

  /** A station brings its own weather and place; what was there before is set aside. */
  #weather(id) {
    const site = this.plan.site ?? {};
    if (id) {
      if (!site.climate?.id) {
        this.setAside[SITE] = {
          monthly: site.climate?.monthly,
          place: PLACE.map((name) => site[name]),
        };
      }
      PLACE.forEach((name) => delete site[name]);
      site.climate = { id };
    } else {
      const before = this.setAside[SITE];
      site.climate = before?.monthly ? { monthly: before.monthly } : {};
      PLACE.forEach((name, i) => {
        delete site[name];
        if (before?.place[i] !== undefined) {
          site[name] = before.place[i];
        }
      });
    }
    this.plan.site = site;
    this.#all();
  }

  #overrides(list) {
    const numbers = {};
    list.querySelectorAll(":scope > .entries > .entry").forEach((entry) => {
      const id = entry.querySelector(".key").value.trim();
      const text = entry.querySelector(".amount").value.trim();
      if (id !== "" && text !== "") {
        numbers[id] = parsed(text) ?? text;
      }
    });
    this.plan.coefficients = numbers;
    if (Object.keys(numbers).length === 0) {
      delete this.plan.coefficients;
    }
    this.changed(list.dataset.pointer);
  }

  #pressed(target) {
    const button = target.closest("button.add, button.remove, button.undo");
    if (!button) {
      return;
    }
    const list = button.closest('[data-kind="list"], [data-kind="overrides"]');
    const entries = list.querySelector(":scope > .entries");
    const act = ["add", "remove", "undo"].find((name) => button.classList.contains(name));
    const at = [...entries.children].indexOf(button.closest(".entry"));
    const entry = list.dataset.kind === "overrides"
      ? this.#changeOverrides(list, entries, act, at)
      : this.#changeList(list, entries, act, at);
    this.#undoButton(list);
    const next = act === "remove"
      ? list.querySelector(":scope > button.undo")
      : entry.querySelector("input, select");
    next.focus();
  }

  /** Adds, removes or brings back an entry of a list; gives the one that is there now. */
  #changeList(list, entries, act, at) {
    const pointer = list.dataset.pointer;
    const values = [...(get(this.plan, pointer) ?? [])];
    const removed = this.#removedFrom(list);
    let place = values.length;
    if (act === "remove") {
      removed.push({ at, value: values.splice(at, 1)[0] });
    } else if (act === "undo") {
      const last = removed.pop();
      place = Math.min(last.at, values.length);
      values.splice(place, 0, last.value);
    } else {
      values.push({});
    }
    if (values.length === 0) {
      drop(this.plan, pointer, (above) => this.#stays(above));
    } else {
      put(this.plan, pointer, values);
    }
    this.#list(list);
    this.#all();
    this.changed(pointer);
    return entries.children[place];
  }

  /** The same for the numbers that are set by their ids. */
  #changeOverrides(list, entries, act, at) {
    const removed = this.#removedFrom(list);
    const template = list.querySelector(":scope > template");
    let entry = entries.children[at];
    if (act === "remove") {
      const value = entry.querySelector(".amount").value;
      removed.push({ at, value: [entry.querySelector(".key").value, value] });
      entry.remove();
    } else if (act === "undo") {
      const last = removed.pop();
      entry = this.#override(template, ...last.value);
      entries.insertBefore(entry, entries.children[last.at] ?? null);
    } else {
      entry = this.#override(template, "", "");
      entries.append(entry);
    }
    if (act !== "add") {
      this.#overrides(list);
    }
    return entry;
  }

  /** What was removed from a list, the latest last. */
  #removedFrom(list) {
    return (this.removed[list.dataset.pointer] ??= []);
  }

  /** The button that brings back what was removed last. */
  #undoButton(list) {
    const last = this.#removedFrom(list).at(-1);
    const button = list.querySelector(":scope > button.undo");
    button.hidden = last === undefined;
    button.querySelector(".count").textContent = last === undefined ? "" : String(last.at + 1);
  }

  /** Twelve numbers copied from a table fill twelve fields at once. */
  #pasted(event) {
    const element = event.target.closest('[data-kind="twelve"], [data-kind="sectors"]');
    const copied = (event.clipboardData?.getData("text") ?? "").trim();
    // a comma parts numbers only where nothing else does; else it is a decimal comma
    const spaced = copied.split(/[\s;]+/);
    const texts = spaced.length === 12 ? spaced : copied.split(/[\s;,]+/);
    if (!element || texts.length !== 12 || texts.some((text) => parsed(text) === null)) {
      return;
    }
    event.preventDefault();
    element.querySelectorAll("input").forEach((input, i) => {
      input.value = texts[i];
    });
    this.#typed(event.target);
  }
}
