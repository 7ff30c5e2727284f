import { Decimal as HostDecimal } from "decimal.js";

/** Our own decimal numbers: 40 digits, half to even, untouched by what a host program sets on its copy. */
export const Decimal: typeof HostDecimal = /* @__PURE__ */ HostDecimal.clone({
  defaults: true,
  precision: 40,
  rounding: 6,
  toExpNeg: -60,
  toExpPos: 60,
});
export type Decimal = HostDecimal;

const DECIMAL_TEXT = /^[+-]?\d{1,40}(?:\.\d{1,60})?(?:[eE][+-]?\d{1,2})?$/;
const KEPT_DIGITS = 34;
const Kept = /* @__PURE__ */ Decimal.clone({ precision: KEPT_DIGITS });

/** Whether text is a decimal number such as units write it. */
export function isDecimalText(text: unknown): text is string {
  return typeof text === "string" && text.length <= 100 && DECIMAL_TEXT.test(text);
}

/** The number a caller wrote, exactly as written; null when it is no finite decimal number. */
export function decimalFrom(amount: unknown): Decimal | null {
  if (typeof amount === "number")
    return Number.isFinite(amount) && Math.abs(amount) < 1e60 ? new Decimal(amount) : null;
  return isDecimalText(amount) ? new Decimal(amount) : null;
}

const FRACTION_TEXT = /^([+-]?)(?:(\d{1,20}) )?(\d{1,20})\/0*([1-9]\d{0,19})$/;

/** As `decimalFrom`, or a fraction as it is written: "1/8", "17 1/3"; to 34 digits where it has no end. */
export function amountFrom(amount: unknown): Decimal | null {
  const found = typeof amount === "string" ? FRACTION_TEXT.exec(amount) : null;
  if (found === null) return decimalFrom(amount);
  const [, sign = "", whole = "0", over = "0", under = "1"] = found;
  return kept(new Decimal(over).div(under).plus(whole).times(`${sign}1`));
}

/** Plain digits, never an exponent. */
export function decimalText(x: Decimal): string {
  return x.isZero() ? "0" : x.toFixed();
}

/** One digit of a number, counted from the first that is not zero. */
function digitAt(place: number, { d: words }: Decimal): number {
  const inFirst = String(words[0] ?? 0).length;
  if (place <= inFirst) return Number(String(words[0])[place - 1]);
  const behind = place - inFirst - 1;
  const word = words[1 + Math.floor(behind / 7)] ?? 0;
  return Math.floor(word / 10 ** (6 - (behind % 7))) % 10;
}

/**
 * What is kept of a quotient: 34 digits. Where 30 digits leave a short number it is that number, so that a length taken
 * to another unit and back is the same length.
 */
export function kept(x: Decimal): Decimal {
  if (x.precision() <= 20) return x;
  // Only a row of noughts or nines in the middle makes a short number: most are told by one digit of it.
  const middle = digitAt(25, x);
  if (middle === 0 || middle === 9) {
    const short = x.toSignificantDigits(30);
    if (short.precision() <= 20) return short;
  }
  return x.precision() <= KEPT_DIGITS ? x : x.toSignificantDigits(KEPT_DIGITS);
}

/** What is kept of the quotient of two: divided to no more digits than that, in half the time. */
export function keptQuotient(over: Decimal, under: Decimal): Decimal {
  return kept(new Decimal(Kept.div(over, under)));
}

/** How near a step counts as on it: the residue of 40-digit division, or of a double where a plain number came in. */
export const EXACT_STEP = "1e-20";
export const PLAIN_STEP = "1e-12";
/** The same for a cell, in decimals: a part of the number could only be told by writing its sum twice. Right to a million. */
export const CELL_DECIMALS = 9;

/** The whole number that x is meant to be, or null when it lies between two. */
export function onStep(x: Decimal, nearness: string): Decimal | null {
  const whole = x.round();
  const allowed = Decimal.max(1, x.abs()).times(nearness);
  return x.minus(whole).abs().lte(allowed) ? whole : null;
}

export type Rounding = "roundUp" | "roundDown" | "nearest";

/** Rounds to a whole number in the named direction; halves go up for "nearest". */
export function rounded(x: Decimal, direction: Rounding, nearness: string): Decimal {
  const whole = onStep(x, nearness);
  if (whole !== null) return whole;
  if (direction === "roundUp") return x.ceil();
  if (direction === "roundDown") return x.floor();
  return (onStep(x.times(2), nearness) ?? x.times(2)).div(2).plus("0.5").floor();
}

/** A number as shown: at most so many significant digits, all whole digits kept; `exact` is false when digits were left out. */
export function shown(x: Decimal, digits = 6): { readonly text: string; readonly exact: boolean } {
  const whole = kept(x);
  const wholeDigits = whole.abs().lt(1) ? 0 : whole.abs().trunc().precision(true);
  const short = whole.toSignificantDigits(Math.max(digits, wholeDigits), Decimal.ROUND_HALF_UP);
  return { text: decimalText(short), exact: short.eq(whole) };
}
