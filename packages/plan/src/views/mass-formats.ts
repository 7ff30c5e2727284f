import { asText, compare, grams, inUnit, kilograms, ounces, unitOf } from "@thrum/maths";
import type { Mass, Unit } from "@thrum/maths";
import type { Way } from "./formats.js";
import type { Units } from "./units.js";

type MassFormat = (mass: Mass, units: Units, like?: Unit<"mass">) => string;

const POUND = 16;

function pounds(mass: Mass, rounding: Way): string {
  const weighed = inUnit(mass, ounces);
  if (compare(weighed, ounces(POUND)) < 0) return asText(weighed, { step: "0.1", rounding });
  const whole = Number(asText(weighed, { step: "1", rounding }).split(" ")[0]);
  const over = whole % POUND;
  return `${String((whole - over) / POUND)} lb${over === 0 ? "" : ` ${String(over)} oz`}`;
}

export function scale(rounding: Way): (mass: Mass, units: Units, like?: Unit<"mass">) => string {
  return (mass, _, like = unitOf(mass)) => {
    const { symbol } = like;
    if (symbol === "lb" || symbol === "oz") return pounds(mass, rounding);
    return compare(mass, grams(10_000)) < 0
      ? asText(inUnit(mass, grams), { step: compare(mass, grams(100)) < 0 ? "0.1" : "1", rounding })
      : asText(inUnit(mass, kilograms), { step: "0.01", rounding });
  };
}

/** As a scale shows it: what is needed or bought. */
export const byTheScale: MassFormat = scale("roundUp");
/** What there is, or is left over. */
export const byTheScaleDown: MassFormat = scale("roundDown");
