import { decimalFrom } from "../engine/numbers.js";
import { described, isUnit, unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { missingOr, QuantityError } from "../engine/refusal.js";

const MOST = 1_000_000;

function refuse(field: string, expected: string, given: unknown, code: "wrong-kind" | "out-of-range"): never {
  const place = { function: "lengthPerMass", path: [field] };
  const remedy = "Write lengthPerMass(metres, 50, grams).";
  throw new QuantityError({
    code: missingOr(given, code),
    ...place,
    expected,
    received: described(given),
    remedy,
  });
}

/** "metres", 50, "grams" → "metresPer50Grams" */
function nameOf(over: string, many: number, under: string): string {
  const cased = under.charAt(0).toUpperCase() + under.slice(1);
  return many === 1 ? `${over}Per${cased.replace(/s$/u, "")}` : `${over}Per${String(many)}${cased}`;
}

/**
 * The count that a label prints as so much length to so much mass: a system of the label's own numbers.
 *
 * @param length the unit of the length, such as `metres`
 * @param many how many of the mass it goes to, a whole number from 1 to a million
 * @param mass the unit of the mass, such as `grams`
 * @throws QuantityError "wrong-kind" or "out-of-range" for anything else
 * @example lengthPerMass(metres, 50, grams)(225).toString() // "225 m/50 g"
 */
export function lengthPerMass(length: Unit<"length">, many: number, mass: Unit<"mass">): Unit<"length per mass"> {
  const [over, under, times]: readonly unknown[] = [length, mass, many];
  if (!isUnit(over) || over.dimension !== "length") return refuse("length", "a unit of length", length, "wrong-kind");
  if (!isUnit(under) || under.dimension !== "mass") return refuse("mass", "a unit of mass", mass, "wrong-kind");
  const isWhole = decimalFrom(times)?.isInteger() === true && many >= 1 && many <= MOST;
  if (!isWhole) return refuse("many", `a whole number from 1 to ${String(MOST)}`, many, "out-of-range");
  const symbol = `${length.symbol}/${many === 1 ? "" : `${String(many)} `}${mass.symbol}`;
  const name = nameOf(length.name, many, mass.name);
  return unit({ dimension: "length per mass", name, symbol, of: { length: [1, length], mass: [many, mass] } });
}
