import { asText, grams, inUnit, inches, kilograms, metres, ounces, pounds, yards } from "@thrum/maths";
import type { Length, Mass, Unit } from "@thrum/maths";

const MASSES: Readonly<Record<string, Unit<"mass">>> = { grams, kilograms, pounds, ounces };

function isImperial({ unit }: Length): boolean {
  return unit === "inches" || unit === "feet" || unit === "yards";
}

/** A length as a tape shows it: eighths of an inch, or millimetres; rounded up where yarn is measured off by it. */
export function tapeText(length: Length, rounding: "nearest" | "roundUp" = "nearest"): string {
  if (isImperial(length)) return asText(inUnit(length, inches), { step: "1/8", rounding });
  return asText(length, { step: length.unit === "metres" ? "0.01" : "0.1", rounding });
}

/** A length of yarn or warp in yards or metres, rounded up. */
export function yarnText(length: Length): string {
  return asText(inUnit(length, isImperial(length) ? yards : metres), { step: "0.01", rounding: "roundUp" });
}

/** A mass in the unit of another, so that the two can be compared at a glance. */
export function massText(mass: Mass, like: Mass, rounding: "roundUp" | "roundDown"): string {
  const unit = MASSES[like.unit] ?? grams;
  return asText(inUnit(mass, unit), { step: "0.01", rounding });
}
