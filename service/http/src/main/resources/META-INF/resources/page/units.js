// Numbers of a plan are always SI. What is typed in other units is turned into SI once, and what is
// shown is turned back to the digits that were typed.

const DIGITS = 12;

/** The factors that stand on a field. */
export function unitOf(element) {
  const data = element.dataset;
  return {
    times: Number(data.times),
    over: Number(data.over),
    offset: Number(data.offset),
    si: data.si,
    us: data.us,
  };
}

/** The number that a text is; null if it is none. */
export function parsed(text) {
  const trimmed = text.trim().replace(/\u2212/g, "-");
  return /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(trimmed) ? Number(trimmed) : null;
}

/** A typed text as what the plan holds: a number in SI, or the text itself if it is no number. */
export function taken(text, unit, customary) {
  const number = parsed(text);
  if (number === null) {
    return text.trim();
  }
  if (!customary) {
    return number;
  }
  return Number((((number - unit.offset) * unit.over) / unit.times).toPrecision(15));
}

/** What the plan holds as the text that stands in its field. */
export function shown(value, unit, customary) {
  if (typeof value !== "number") {
    return value === undefined || value === null ? "" : String(value);
  }
  if (!customary) {
    return plain(value);
  }
  return plain(Number(((value * unit.times) / unit.over + unit.offset).toPrecision(DIGITS)));
}

/** Three digits, for defaults and labels. */
export function short(value) {
  if (value === null || value === undefined || Number.isNaN(value)) {
    return "\u2013";
  }
  if (Math.abs(value) < 1e-9) {
    return "0";
  }
  return plain(Number(value.toPrecision(3))).replace("-", "\u2212");
}

/** A number without an exponent where it is of a size that people write out. */
function plain(value) {
  const text = String(value);
  if (!text.includes("e")) {
    return text;
  }
  const size = Math.abs(value);
  return size > 1e-9 && size < 1e21 ? value.toFixed(20).replace(/\.?0+$/, "") : text;
}
