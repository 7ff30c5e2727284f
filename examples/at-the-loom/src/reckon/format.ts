import {
  asText,
  centimetres,
  compare,
  grams,
  inUnit,
  inches,
  isQuantity,
  kilograms,
  metres,
  ounces,
  unitOf,
  yards,
} from "@thrum/maths";
import type { Length, Mass, Quantity } from "@thrum/maths";
import type { Units } from "@thrum/plan";

type Rounding = "nearest" | "roundUp" | "roundDown";

const isLength = (amount: Quantity<string>): amount is Length => amount.dimension === "length";
const isMass = (amount: Quantity<string>): amount is Mass => amount.dimension === "mass";

/** On the tape: eighths of an inch, or millimetres. */
function byTheTape(length: Length, units: Units, rounding: Rounding = "nearest"): string {
  return units === "inches"
    ? asText(inUnit(length, inches), { step: "1/8", rounding })
    : asText(inUnit(length, centimetres), { step: "0.1", rounding });
}

/** Yarn and warp, in yards or metres. */
function byTheYard(length: Length, units: Units, rounding: Rounding = "roundUp"): string {
  return asText(units === "inches" ? inUnit(length, yards) : inUnit(length, metres), { step: "0.01", rounding });
}

const POUND = 16;

/** Pounds and whole ounces from a pound on, as a scale shows them. */
function pounds(mass: Mass, rounding: Rounding): string {
  const weighed = inUnit(mass, ounces);
  if (compare(weighed, ounces(POUND)) < 0) return asText(weighed, { step: "0.1", rounding });
  const whole = Number(asText(weighed, { step: "1", rounding }).split(" ")[0]);
  const over = whole % POUND;
  return `${String((whole - over) / POUND)} lb${over === 0 ? "" : ` ${String(over)} oz`}`;
}

/** In the unit of the package, or of what is on hand, as the sheets print it. */
function byTheScale(mass: Mass, like: Mass, rounding: Rounding = "roundUp"): string {
  if (["lb", "oz"].includes(unitOf(like).symbol)) return pounds(mass, rounding);
  return compare(mass, grams(10_000)) < 0
    ? asText(inUnit(mass, grams), { step: compare(mass, grams(100)) < 0 ? "0.1" : "1", rounding })
    : asText(inUnit(mass, kilograms), { step: "0.01", rounding });
}

/** A figure as it is shown beside its label. */
export function shown(
  value: unknown,
  units: Units,
  way: "tape" | "yard",
  rounding: Rounding = "nearest",
  like: unknown = value,
): string {
  if (typeof value === "number") return String(value);
  if (!isQuantity(value)) return String(value);
  if (isLength(value)) return way === "tape" ? byTheTape(value, units, rounding) : byTheYard(value, units, rounding);
  if (isMass(value)) return byTheScale(value, isQuantity(like) && isMass(like) ? like : value, rounding);
  return asText(value, { step: "0.01" }).replace("/", " per ").replace(/ in$/u, " inch");
}

const EIGHTHS: Readonly<Record<string, string>> = {
  "1/8": "⅛",
  "1/4": "¼",
  "3/8": "⅜",
  "1/2": "½",
  "5/8": "⅝",
  "3/4": "¾",
  "7/8": "⅞",
};

/** Eighths as one sign, for the eye: 58⅜ in. */
export function eighths(text: string): string {
  return text.replace(/ ?\b([1-7]\/[248])\b/gu, (whole, part: string) => EIGHTHS[part] ?? whole);
}
