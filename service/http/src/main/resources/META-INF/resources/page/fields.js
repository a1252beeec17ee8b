// Binds the form's fields to the plan. The server wrote every field with its pointer and units;
// nothing of them is repeated here.

import { drop, get, put } from "./plan.js";
import { parsed, short, shown, taken, unitOf } from "./units.js";

const NEW = /__n__/g;

/** What the page has fields for, so that the rest of a plan can be told of. */
export class Fields {
  /**
   * @param form the form
   * @param changed is called with the pointer of what was changed
   */
  constructor(form, changed) {
    this.form = form;
    this.changed = changed;
    this.plan = {};
    this.customary = false;
    this.put_aside = {};
    form.addEventListener("input", (event) => this.#typed(event.target));
    form.addEventListener("change", (event) => this.#typed(event.target));
    form.addEventListener("click", (event) => this.#pressed(event.target));
    form.addEventListener("paste", (event) => this.#pasted(event));
  }

  /** Shows a plan. */
  show(plan) {
    this.plan = plan;
    this.put_aside = {};
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

  /** Elements that show what lies at or nearest above a pointer. */
  nearest(pointer) {
    for (let at = pointer; at !== ""; at = at.slice(0, at.lastIndexOf("/"))) {
      const found = this.form.querySelector(`[data-pointer="${CSS.escape(at)}"]`);
      if (found) {
        return found;
      }
    }
    return null;
  }

  #all() {
    this.form.querySelectorAll("[data-pointer]").forEach((element) => this.#one(element));
    this.#climate();
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
    const usual = element.dataset.usual;
    input.value = shown(value, unit, this.customary);
    input.placeholder = usual
      ? short(this.customary ? (Number(usual) * unit.times) / unit.over + unit.offset : Number(usual))
      : "";
    element.querySelector(".typed .unit").textContent = this.customary ? unit.us : unit.si;
  }

  #twelve(element, value) {
    const unit = unitOf(element);
    element.querySelector("legend .unit").textContent = this.customary ? unit.us : unit.si;
    element.querySelectorAll("input").forEach((input, i) => {
      input.value = shown((value ?? [])[i], unit, this.customary);
    });
  }

  /** Own normals are asked for only where no station is named. */
  #climate() {
    const own = this.form.querySelector('[data-pointer="/site/climate/monthly"]');
    if (own) {
      own.hidden = Boolean(get(this.plan, "/site/climate/id"));
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
    } else {
      const value = this.#value(element, target);
      if (value === undefined) {
        drop(this.plan, pointer, (above) => this.#stays(above));
      } else {
        put(this.plan, pointer, value);
      }
      if (pointer === "/site/climate/id") {
        this.#weather(value);
      }
    }
    this.changed(pointer);
  }

  #value(element, target) {
    switch (element.dataset.kind) {
      case "number":
        return target.value.trim() === ""
          ? undefined
          : taken(target.value, unitOf(element), this.customary);
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
      put(this.plan, pointer, this.put_aside[pointer] ?? {});
    } else {
      this.put_aside[pointer] = get(this.plan, pointer);
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

  /** A station and own normals rule each other out. */
  #weather(id) {
    if (id) {
      this.put_aside.monthly = get(this.plan, "/site/climate/monthly") ?? this.put_aside.monthly;
      delete this.plan.site.climate.monthly;
    } else if (this.put_aside.monthly) {
      put(this.plan, "/site/climate/monthly", this.put_aside.monthly);
    }
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
    const button = target.closest("button.add, button.remove");
    if (!button) {
      return;
    }
    const list = button.closest('[data-kind="list"], [data-kind="overrides"]');
    const entries = list.querySelector(":scope > .entries");
    const adding = button.classList.contains("add");
    if (list.dataset.kind === "overrides") {
      if (adding) {
        entries.append(this.#override(list.querySelector(":scope > template"), "", ""));
        entries.lastElementChild.querySelector("input").focus();
      } else {
        button.closest(".entry").remove();
        list.querySelector("button.add").focus();
        this.#overrides(list);
      }
      return;
    }
    const pointer = list.dataset.pointer;
    const values = get(this.plan, pointer) ?? [];
    if (adding) {
      put(this.plan, pointer, [...values, {}]);
    } else {
      values.splice(Number(button.closest(".entry").dataset.index), 1);
      if (values.length === 0) {
        drop(this.plan, pointer, (above) => this.#stays(above));
      }
    }
    this.#list(list);
    this.#all();
    const next = adding
      ? entries.lastElementChild.querySelector("input, select")
      : list.querySelector(":scope > button.add");
    next.focus();
    this.changed(pointer);
  }

  /** Twelve numbers copied from a table fill twelve fields at once. */
  #pasted(event) {
    const element = event.target.closest('[data-kind="twelve"], [data-kind="sectors"]');
    const texts = (event.clipboardData?.getData("text") ?? "").trim().split(/[\s;,]+/);
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
