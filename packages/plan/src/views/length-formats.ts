import { asText, centimetres, inUnit, inches, metres, unitOf, yards } from "@thrum/maths";
import type { Length, Quantity } from "@thrum/maths";
import type { Way } from "./formats.js";
import type { Units } from "./units.js";

type LengthFormat = (length: Length, units: Units) => string;

/** Six figures at most: the step of the size of an amount. */
function sixFigures(amount: Quantity<string>, rounding: Way): string {
  const size = amount.in(unitOf(amount));
  const step = size >= 100_000 ? "1" : size >= 10_000 ? "0.1" : "0.01";
  return asText(amount, { step, rounding });
}

export function tape(rounding: Way): (length: Length, units: Units) => string {
  return (length, units) =>
    units === "inches"
      ? asText(inUnit(length, inches), { step: "1/8", rounding })
      : asText(inUnit(length, centimetres), { step: "0.1", rounding });
}

export function yard(rounding: Way): (length: Length, units: Units) => string {
  return (length, units) =>
    units === "inches" ? sixFigures(inUnit(length, yards), rounding) : sixFigures(inUnit(length, metres), rounding);
}

/** The nearest mark of the tape. */
export const byTheTape: LengthFormat = tape("nearest");
/** What is needed. */
export const byTheTapeUp: LengthFormat = tape("roundUp");
/** What there is, or is spared. */
export const byTheTapeDown: LengthFormat = tape("roundDown");
/** Yarn and warp that are needed, in yards or metres. */
export const byTheYard: LengthFormat = yard("roundUp");
/** Those that are there, or are spared. */
export const byTheYardDown: LengthFormat = yard("roundDown");
