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
import type { Length, Mass, Money, Quantity, Unit } from "@thrum/maths";
import type { Line } from "./block.js";
import type { Units } from "./units.js";

type LengthFormat = (length: Length, units: Units) => string;
type MassFormat = (mass: Mass, units: Units, like?: Unit<"mass">) => string;
export type Way = "nearest" | "roundUp" | "roundDown";

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

/** So many to a length, six figures at most. */
export function perLength(amount: Quantity<string>): string {
  return asText(amount, { step: "0.01" }).replace("/", " per ").replace(/ in$/u, " inch");
}

/** A percentage to the tenth; of what, and whether lost or added, is said by the sentence. */
export function percent(amount: Quantity<string>): string {
  return asText(amount, { step: "0.1" }).replace(/ (?:lost|added)$/u, "");
}

function hundredths(rounding: Way): (amount: Money) => string {
  return (amount) => {
    const [number = "", name = ""] = asText(amount, { step: "0.01", rounding }).split(" ");
    const [whole = "", part = ""] = number.split(".");
    return `${whole}.${part.padEnd(2, "0")} ${name}`;
  };
}

/** Money; what is asked at least is rounded up. */
export const money: (amount: Money) => string = hundredths("nearest");
export const moneyUp: (amount: Money) => string = hundredths("roundUp");

/** A count, or pieces and the part of one: what there is, to the hundredth below. */
export function numberDown(number: number): string {
  return String(Math.floor(number * 100) / 100);
}

/** A count, or a key of the job, as it stands. */
export function plainly(value: unknown, units: Units): string | Line {
  if (typeof value === "number") return [value];
  if (typeof value === "string") return value;
  if (isQuantity(value)) return value.dimension.includes("per") ? perLength(value) : asText(value);
  throw new TypeError(`nothing says how ${units} show this`);
}
