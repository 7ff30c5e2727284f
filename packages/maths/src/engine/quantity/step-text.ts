import { Decimal, decimalFrom, decimalText, EXACT_STEP, rounded } from "../numbers.js";
import type { Rounding } from "../numbers.js";
import { refuse } from "../refusal.js";
import { described } from "./described.js";

/** A step as its two numbers, or the refusal of what is none. */
export function stepFrom(text: unknown): readonly [over: string, under: string] {
  const [over = "", under = "1", more] = typeof text === "string" && text.length <= 20 ? text.split("/") : [];
  const plain = decimalFrom(over);
  const parts = decimalFrom(under);
  if (more === undefined && plain?.gt(0) && parts?.isInteger() && parts.gt(0)) return [over, under];
  refuse(
    "unreadable",
    ["asText", "step"],
    'a step such as "1/8", "1" or "0.01"',
    described(text),
    "The step is counted in the quantity's own unit.",
  );
}

const ROUNDINGS: readonly unknown[] = ["roundUp", "roundDown", "nearest"] satisfies Rounding[];

/** A direction of rounding, or the refusal of what is none. */
export function roundingFrom(rounding: unknown): Rounding {
  if (rounding === undefined) return "nearest";
  if (ROUNDINGS.includes(rounding)) return rounding as Rounding;
  refuse(
    "unknown-word",
    ["asText", "rounding"],
    ROUNDINGS.join(" or "),
    described(rounding),
    "Leave it out for the nearest step.",
  );
}

/** Rounds to the step first, then splits whole and part, so that 11.999 at 1/8 is 12 and not 11 8/8. */
export function fractionText(value: Decimal, [over, under]: readonly [string, string], rounding: Rounding): string {
  const signed = rounded(value.times(under).div(over), rounding, EXACT_STEP).times(over);
  const sign = signed.isNegative() && !signed.isZero() ? "-" : "";
  const steps = signed.abs();
  if (under === "1") return sign + decimalText(steps);
  const whole = steps.div(under).floor();
  let [top, bottom] = [steps.minus(whole.times(under)), new Decimal(under)];
  while (!top.isZero() && top.mod(2).isZero() && bottom.mod(2).isZero()) [top, bottom] = [top.div(2), bottom.div(2)];
  if (top.isZero()) return sign + decimalText(whole);
  return `${sign}${whole.isZero() ? "" : `${decimalText(whole)} `}${decimalText(top)}/${decimalText(bottom)}`;
}
