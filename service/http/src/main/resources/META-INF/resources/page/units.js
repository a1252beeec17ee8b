// Numbers of a plan are always SI. What is typed in other units is turned into SI once, and what is
// shown is turned back to the digits that were typed.

/** Digits of a converted number that are not the rounding of binary fractions. */
const DIGITS = 12;

/** A converted number of so many digits is taken to have been typed, and is shown whole. */
const TYPED_DIGITS = 8;

/** Digits of any other converted number; all those before the point are shown in any case. */
const SHOWN_DIGITS = 3;

/** Groups of three set apart by spaces, as the page itself writes large numbers. */
const SPACED = /^[+-]?\d{1,3}([ \u00a0\u202f]\d{3})+([.,]\d+)?$/;

/** One comma before three digits: a thousand to some readers, a decimal comma to others. */
const AMBIGUOUS = /^[+-]?[1-9]\d{0,2},\d{3}$/;

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

/**
 * The number that a text is; null if it is none. A single comma is a decimal comma, unless it could
 * also part thousands.
 */
export function parsed(text) {
  const trimmed = text.trim().replace(/\u2212/g, "-");
  const spaced = SPACED.test(trimmed);
  if (!spaced && ambiguous(trimmed)) {
    return null;
  }
  const plainly = (spaced ? trimmed.replace(/[ \u00a0\u202f]/g, "") : trimmed).replace(
    /^([^.,]*),([^.,]*)$/,
    "$1.$2",
  );
  return /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(plainly) ? Number(plainly) : null;
}

/** Whether a comma in a text can be read as a decimal comma and as a separator of thousands. */
export function ambiguous(text) {
  return AMBIGUOUS.test(text.trim());
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

/** What the plan holds as the text of its field. */
export function shown(value, unit, customary) {
  if (typeof value !== "number") {
    return value === undefined || value === null ? "" : String(value);
  }
  if (!customary || isSame(unit)) {
    return plain(value);
  }
  const exact = Number(((value * unit.times) / unit.over + unit.offset).toPrecision(DIGITS));
  return plain(digitsOf(exact) <= TYPED_DIGITS ? exact : rounded(exact, Math.round));
}

/** A bound of what a field takes, in the units shown; rounded so that it is itself taken. */
export function bound(value, unit, customary, inward) {
  if (!customary || isSame(unit)) {
    return plain(value);
  }
  const exact = Number(((value * unit.times) / unit.over + unit.offset).toPrecision(DIGITS));
  return plain(rounded(exact, inward));
}

function isSame(unit) {
  return unit.times === unit.over && unit.offset === 0;
}

/** How many digits a number is written with, without the zeros at its ends. */
function digitsOf(number) {
  return number.toExponential().replace(/e.*$/, "").replace(/[^\d]/g, "").length;
}

/** A number to three digits, or to its last digit before the point if it has more of them. */
function rounded(number, towards) {
  if (number === 0) {
    return 0;
  }
  const before = Math.floor(Math.log10(Math.abs(number))) + 1;
  const places = Math.max(0, SHOWN_DIGITS - before);
  const scale = 10 ** places;
  return Number((towards(Number((number * scale).toPrecision(DIGITS))) / scale).toFixed(places));
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
