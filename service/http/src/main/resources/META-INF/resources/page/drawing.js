// Small drawings of the studies; what the estimate itself shows is drawn by the service.

const SVG = "http://www.w3.org/2000/svg";

/** An SVG element. */
export function svg(name, attributes, ...children) {
  const element = document.createElementNS(SVG, name);
  Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
  element.append(...children);
  return element;
}

/** An HTML element. */
export function html(name, attributes, ...children) {
  const element = document.createElement(name);
  Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
  element.append(...children);
  return element;
}

/** A table; the first cell of each row names it. */
export function table(heads, rows) {
  const head = heads.map((text) => html("th", { scope: "col" }, text));
  return html(
    "div",
    { class: "wide", tabindex: "0", role: "group", "aria-label": heads[0] },
    html(
      "table",
      {},
      html("thead", {}, html("tr", {}, ...head)),
      html(
        "tbody",
        {},
        ...rows.map((cells) =>
          html(
            "tr",
            {},
            html("th", { scope: "row" }, cells[0]),
            ...cells.slice(1).map((text) => html("td", { class: "number" }, text)),
          ),
        ),
      ),
    ),
  );
}

/** A figure with the table behind it. */
export function figure(id, caption, drawing, summary, behind) {
  return html(
    "figure",
    { class: "drawn", id },
    html("figcaption", {}, caption),
    drawing,
    html(
      "details",
      { class: "behind" },
      html("summary", {}, summary, html("span", { class: "unseen" }, `: ${caption}`)),
      behind,
    ),
  );
}
