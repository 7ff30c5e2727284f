import type { Unit } from "../engine/quantity/index.js";
import { inWords, singular } from "../engine/working/index.js";
import type { Constant } from "./hand.js";
import { TAKEN_FOR, TOLD_TO } from "./unit-sizes.js";
import type { Sized } from "./unit-sizes.js";

type Mixed = Pick<Unit<string>, "name" | "symbol" | "scale">;

const asUnit = ([name, symbol, ...scale]: Sized): Mixed => ({ name, symbol, scale });

/** The units of its kind that a reader takes a unit for. */
export function takenFor({ dimension }: Unit<string>): readonly Mixed[] {
  return (TAKEN_FOR[dimension] ?? []).map(asUnit);
}

/** The lengths that a number of things is told to, with the one each is taken for. */
export function toldTo(): readonly (readonly [of: Mixed, by: Mixed])[] {
  return TOLD_TO.map(([of, by]) => [asUnit(of), asUnit(by)]);
}

/** How many of the second unit one of the first is. */
export function ratioOf({ scale: one }: Pick<Mixed, "scale">, { scale: other }: Pick<Mixed, "scale">): number {
  return ((one[0] / one[1]) * other[1]) / other[0];
}

/** What stands behind a number for a unit beside its name and its symbol, one of it or many. */
const ALSO: Readonly<Record<string, readonly string[]>> = { in: ['"', "″"], ft: ["foot", "'", "′"] };

/** Whether a word means a unit. */
export function isCalled(word: string, { name, symbol }: Pick<Mixed, "name" | "symbol">): boolean {
  const [said, own] = [word.replace(/\.$/u, "").toLowerCase(), symbol.toLowerCase()];
  const many = inWords(name);
  return [own, `${own}s`, many, singular(many), ...(ALSO[symbol] ?? [])].includes(said);
}

/** What a hand puts for a constant: another number of lengths to a count, of inches or ounces, or the like half remembered. */
export const CONSTANTS: Readonly<Record<Constant["kind"], readonly (readonly number[])[]>> = {
  amount: [
    [840, 560, 300, 256, 1600, 1000],
    [1000, 9000, 10000],
  ],
  length: [
    [36, 12, 3],
    [2.54, 25.4],
    [1000, 100, 10, 9000],
    [0.9144, 1.0936],
  ],
  mass: [
    [16, 10, 12, 14],
    [7000, 437.5, 16],
    [453.59237, 500, 28.35],
    [28.349523125, 100, 453.6],
    [1000, 100],
  ],
  percent: [],
};
