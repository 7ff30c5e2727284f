import { asText, centimetres, inUnit, inches, unitOf } from "@thrum/maths";
import type { Length, Quantity } from "@thrum/maths";

type Way = "nearest" | "roundUp" | "roundDown";
const IMPERIAL = ["yd", "ft", "in"];

/** A length in inches or centimetres, whichever goes with the unit it is written in. */
export function inSmallUnit(length: Length, rounding: Way = "nearest"): string {
  const unit = IMPERIAL.includes(unitOf(length).symbol) ? inches : centimetres;
  return asText(inUnit(length, unit), { step: "0.01", rounding });
}

/** So many to a length. */
export function perLengthText(amount: Quantity<string>): string {
  return asText(amount, { step: "0.01" }).replace("/", " per ").replace(/ in$/u, " inch");
}

/** A percentage to the tenth, its base in the sentence beside it. */
export function percentText(amount: Quantity<string>): string {
  return asText(amount, { step: "0.1" }).replace(/ lost$/u, "");
}
