// How sure, and what matters: long studies that tell how far they are and can be stopped.

import { figure, html, svg, table } from "./drawing.js";
import { short } from "./units.js";

const WIDTH = 560;
const ROW = 46;
const LETTERS = 84;

/** Status of a service that is busy; its Retry-After header says for how many seconds. */
const BUSY = 503;

/** Asks for a study, again and again while the service is busy; calls back before each wait. */
async function begun(path, body, signal, busy) {
  for (;;) {
    const response = await fetch(path, {
      method: "POST",
      headers: { "Content-Type": "application/json", Accept: "application/x-ndjson" },
      body: JSON.stringify(body),
      signal,
    });
    if (response.status !== BUSY) {
      return response;
    }
    busy();
    await pause(Number(response.headers.get("Retry-After") ?? 1), signal);
  }
}

/** Waits some seconds, or until a signal ends the wait. */
function pause(seconds, signal) {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, 1000 * seconds);
    signal.addEventListener("abort", () => {
      clearTimeout(timer);
      reject(signal.reason);
    });
  });
}

/** Reads a study line by line as it comes; calls back for each line. */
async function stream(path, body, signal, busy, line) {
  const response = await begun(path, body, signal, busy);
  if (!response.ok) {
    const problem = await response.json();
    const errors = (problem.errors ?? []).map((error) => error.detail).join(" ");
    throw new Error(`${problem.detail} ${errors}`);
  }
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (;;) {
    const { value, done } = await reader.read();
    const lines = (rest + (value ?? "")).split("\n");
    rest = done ? "" : lines.pop();
    lines.filter((text) => text.trim() !== "").forEach((text) => line(JSON.parse(text)));
    if (done) {
      return;
    }
  }
}

/** A unit of the contract as the reader uses it. */
function reader(units, customary) {
  return (ucum, place) => {
    const row = customary
      ? units.rows.find((r) => r.ucum === ucum && new RegExp(r.where, "i").test(place))
      : undefined;
    return {
      of: (value) => (row ? (value * row.times) / row.over + row.offset : value),
      name: row ? row.printed : (units.printed[ucum] ?? ucum),
    };
  };
}

/** A name in lines that fit the drawing; the table behind it has it whole. */
function label(x, y, text) {
  const words = text.split(" ");
  let line = "";
  while (words.length > 0 && (line + " " + words[0]).length <= LETTERS) {
    line = `${line} ${words.shift()}`.trim();
  }
  return svg("text", { class: "tick", x, y }, words.length > 0 ? `${line} \u2026` : line);
}

/** What a figure is called: by the page if it knows it, else by the study. */
function nameOf(figure, says) {
  const meaning = figure.meaning.replace(/([;,] null [^;]*)?\.?$/, "");
  return says[`headline.${figure.name}`] ?? meaning;
}

function filled(text, places) {
  return text.replace(/\{(\w+)\}/g, (all, name) => places[name] ?? all);
}

/** One row of a drawing of ranges: nine of ten as a line, eight of ten as a bar, the middle. */
function range(row, y, spread, central, unit) {
  const ends = [spread.p5, spread.p95, central ?? spread.p50].map(unit.of);
  const low = Math.min(...ends);
  const wide = Math.max(...ends) - low || 1;
  const x = (value) => 8 + ((WIDTH - 16) * (unit.of(value) - low)) / wide;
  row.append(
    svg("path", { class: "axis", d: `M8 ${y}H${WIDTH - 8}` }),
    svg("path", { class: "whisker", d: `M${x(spread.p5)} ${y}H${x(spread.p95)}` }),
    svg("rect", {
      class: "span",
      x: x(spread.p10),
      y: y - 7,
      width: Math.max(1, x(spread.p90) - x(spread.p10)),
      height: 14,
    }),
    svg("path", { class: "middle", d: `M${x(spread.p50)} ${y - 9}V${y + 9}` }),
  );
  if (central !== null && central !== undefined) {
    row.append(
      svg("path", {
        class: "plan",
        d: "M0-5L5 0L0 5L-5 0Z",
        transform: `translate(${x(central)} ${y})`,
      }),
    );
  }
}

/** The ranges of all figures, drawn and tabled. */
function ranges(study, unitOf, says) {
  const figures = study.figures.filter((f) => f.spread !== null && f.spread.p5 !== f.spread.p95);
  const drawing = svg("svg", {
    class: "chart",
    viewBox: `0 0 ${WIDTH} ${ROW * figures.length}`,
    role: "img",
    "aria-label": says["sure.range"],
    "data-chart": "ranges",
  });
  const rows = figures.map((f, i) => {
    const spread = f.together ?? f.spread;
    const unit = unitOf(f.unit, f.name);
    const y = ROW * i + 30;
    const told = (value) => short(value === null ? null : unit.of(value));
    const end = `${told(spread.p10)} \u2026 ${told(spread.p90)} ${unit.name}`;
    const name = nameOf(f, says);
    drawing.append(label(8, y - 14, `${name}: ${end}`));
    range(drawing, y, spread, f.central, unit);
    return [
      name,
      told(spread.p5),
      told(spread.p10),
      told(spread.p50),
      told(spread.p90),
      told(spread.p95),
      told(f.central),
      unit.name,
    ];
  });
  const heads = [
    says["sure.figure"],
    "P5",
    `P10 (${says["sure.least"]})`,
    `P50 (${says["sure.middle"]})`,
    `P90 (${says["sure.most"]})`,
    "P95",
    says["sure.plan"],
    says["sure.unit"],
  ];
  return figure("ranges", says["sure.range"], drawing, says["chart.show-table"], table(heads, rows));
}

/** How many of the draws would say yes to each part. */
function odds(study, says) {
  if (study.verdicts.length === 0) {
    return html("div", {});
  }
  const percent = (share) => `${short(100 * share)} %`;
  const rows = study.verdicts.map((v) => [
    says[`component.${v.component}`] + (v.bed ? ` ${v.bed.replace(/\D+/g, "")}` : ""),
    says[`answer.${v.central}`] ?? "",
    percent(v.yesFraction),
    percent(v.marginalFraction),
    percent(v.noFraction),
  ]);
  const heads = [
    says["odds.part"],
    says["sure.plan"],
    says["answer.yes"],
    says["answer.marginal"],
    says["answer.no"],
  ];
  return html("div", { class: "odds" }, html("h3", {}, says["odds.title"]), table(heads, rows));
}

const MOST_SHARES = 8;

/** The numbers that matter most for one figure, drawn and tabled. */
function shares(study, says) {
  const of = study.figures[0];
  const meanings = new Map(
    (study.screening?.effects ?? []).map((effect) => [effect.pointer, effect.meaning]),
  );
  const top = of.indices.slice(0, MOST_SHARES);
  if (top.length === 0) {
    return html("p", {}, says["matters.nothing"]);
  }
  const drawing = svg("svg", {
    class: "chart",
    viewBox: `0 0 ${WIDTH} ${ROW * top.length}`,
    role: "img",
    "aria-label": says["matters.share"],
    "data-chart": "shares",
  });
  const name = (index) => {
    const id = index.number.replace("/coefficients/", "");
    const meaning = meanings.get(index.number);
    return meaning ? `${meaning.replace(/\.$/, "")} (${id})` : id;
  };
  const drawn = (index) => name(index).split(/; | \(/)[0];
  const most = Math.max(...top.map((index) => index.total), 1e-9);
  const rows = top.map((index, i) => {
    const y = ROW * i;
    const length = (WIDTH - 70) * Math.max(0, index.total / most);
    drawing.append(
      label(0, y + 14, drawn(index)),
      svg("rect", { class: "span", x: 0, y: y + 21, width: Math.max(1, length), height: 14 }),
      svg("text", { class: "tick", x: length + 6, y: y + 33 }, `${short(100 * index.total)} %`),
    );
    const interval = `${short(100 * index.totalLow)} \u2026 ${short(100 * index.totalHigh)} %`;
    return [name(index), `${short(100 * index.total)} %`, interval, `${short(100 * index.first)} %`];
  });
  const heads = [says["matters.number"], says["matters.share"], "95 %", says["matters.alone"]];
  return figure("shares", says["matters.share"], drawing, says["chart.show-table"], table(heads, rows));
}

/** One study of the page: its button, its progress, its place for what comes of it. */
class Desk {
  constructor(section, says, changed, request, draw) {
    this.section = section;
    this.says = says;
    this.changed = changed;
    this.request = request;
    this.draw = draw;
    this.run = section.querySelector(".run");
    this.stop = section.querySelector(".stop-it");
    this.bar = section.querySelector("progress");
    this.status = section.querySelector(".status");
    this.place = section.querySelector(".ranges, .shares");
    this.run.addEventListener("click", () => this.start());
    this.stop.addEventListener("click", () => this.asking?.abort());
  }

  stale() {
    this.asking?.abort();
    if (this.place.childElementCount > 0) {
      this.place.classList.add("stale");
      this.status.textContent = this.says[this.changed];
    }
  }

  async start() {
    const mine = new AbortController();
    this.asking = mine;
    this.#busy(true);
    this.status.textContent = this.says["sure.begun"];
    try {
      const { path, body } = this.request();
      await stream(
        path,
        body,
        mine.signal,
        () => {
          this.status.textContent = this.says["page.busy"];
        },
        (line) => this.#line(line),
      );
    } catch (failure) {
      this.status.textContent = this.#failed(failure);
    } finally {
      this.#busy(false);
    }
  }

  /** What is said of a study that did not end. */
  #failed(failure) {
    if (failure.name === "AbortError") {
      return this.says["sure.stopped"];
    }
    // what fetch throws where there is no answer; its own words are those of the browser
    return failure instanceof TypeError ? this.says["sure.offline"] : failure.message;
  }

  #busy(busy) {
    this.section.dataset.state = busy ? "working" : "done";
    this.bar.hidden = !busy;
    this.bar.removeAttribute("value");
    const toStop = busy || document.activeElement === this.stop;
    this.stop.hidden = !busy;
    this.run.disabled = busy;
    if (toStop) {
      (busy ? this.stop : this.run).focus();
    }
  }

  #line(line) {
    if (line.of !== undefined) {
      this.bar.max = line.of;
      this.bar.value = line.done;
      this.status.textContent = filled(this.says["sure.progress"], line);
    } else if (line.study) {
      this.place.classList.remove("stale");
      this.section.classList.add("drawn-once");
      this.place.replaceChildren(this.draw(line.study));
      this.status.textContent = line.study.draws
        ? filled(this.says["sure.done"], line.study)
        : filled(this.says["matters.done"], line.study);
    } else if (line.status) {
      throw new Error(line.detail);
    }
  }
}

/** Readies the studies; gives back what is to be told when the plan changes. */
export function startStudies(plan, customary, says) {
  const units = JSON.parse(document.getElementById("units-book").textContent);
  const desks = [
    new Desk(
      document.getElementById("sure"),
      says,
      "sure.changed",
      () => ({
        path: "/v1/studies/uncertainty",
        body: { plan: plan(), draws: Number(document.getElementById("draws").value), seed: 1, outputs: ["annual", "decision", "verdicts"] },
      }),
      (study) =>
        html("div", {}, ranges(study, reader(units, customary()), says), odds(study, says)),
    ),
    new Desk(
      document.getElementById("matters"),
      says,
      "matters.changed",
      () => ({
        path: "/v1/studies/sensitivity",
        body: { plan: plan(), outputs: [document.getElementById("figure").value], points: 64, seed: 1 },
      }),
      (study) => shares(study, says),
    ),
  ];
  return { stale: () => desks.forEach((desk) => desk.stale()) };
}
