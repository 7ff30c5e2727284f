import type { Unit, UnitParts } from "./unit.js";

interface NamedUnit<D extends string> {
  readonly dimension: D;
  readonly name: string;
  readonly symbol: string;
  /** What a percentage is taken of, as it stands behind the sign: "lost". */
  readonly base?: string;
  /** What to do instead where an amount is told in no other unit of its kind, for no rate between two lasts. */
  readonly alone?: string;
}

/** A unit of one thing. */
export interface SimpleUnit<D extends string> extends NamedUnit<D> {
  /** An exact fraction of the unit named third, or of the metre, the gram or one. */
  readonly size: readonly [numerator: number, denominator: number, of?: Unit<D>];
}

/** A unit that counts so much of one thing to so much of another. */
export interface CompoundUnit<D extends string> extends NamedUnit<D> {
  readonly of: UnitParts;
}

type Powers = readonly [length: number, mass: number];
const powers = /* @__PURE__ */ new Map<string, Powers>();

/** How often length and mass stand in a dimension: "length per mass" is [1, -1], "mass per area" [-2, 1]. */
export function powersOf(dimension: string): Powers {
  let known = powers.get(dimension);
  if (known === undefined) {
    const [over = "", under = ""] = dimension.split(" per ");
    const count = (word: string): number => Number(over === word) - Number(under === word);
    powers.set(dimension, (known = [count("length") + 2 * count("area") + 3 * count("volume"), count("mass")]));
  }
  return known;
}

type Fraction = readonly [numerator: number, denominator: number];

/** The fraction of two products of whole numbers, in lowest terms. */
function lowest(over: readonly number[], under: readonly number[]): Fraction {
  const [n, d] = [over, under].map((factors) => factors.reduce((product, factor) => product * factor, 1));
  if (n !== undefined && d !== undefined && Number.isSafeInteger(n) && Number.isSafeInteger(d)) {
    let [a, b] = [n, d];
    while (b > 0) [a, b] = [b, a % b];
    return [n / a, d / a];
  }
  const [big, small] = [over, under].map((factors) =>
    factors.reduce((product, factor) => product * BigInt(factor), 1n),
  );
  let [a, b] = [big ?? 1n, small ?? 1n];
  while (b > 0n) [a, b] = [b, a % b];
  return [Number((big ?? 1n) / a), Number((small ?? 1n) / a)];
}

/** The exact size of a unit, in metres, grams or what follows from them. */
export function scaleOf<D extends string>(definition: SimpleUnit<D> | CompoundUnit<D>): Fraction {
  if (!("of" in definition)) {
    const [n, d, base] = definition.size;
    return lowest([n, base?.scale[0] ?? 1], [d, base?.scale[1] ?? 1]);
  }
  const [over, under]: [number[], number[]] = [[], []];
  const counted = powersOf(definition.dimension);
  for (const [at, part] of [definition.of.length, definition.of.mass].entries()) {
    if (part === null) continue;
    const power = counted[at] ?? 0;
    const [up, down] = power > 0 ? [over, under] : [under, over];
    for (let left = Math.abs(power); left > 0; left -= 1) {
      up.push(part[0], part[1].scale[0]);
      down.push(part[1].scale[1]);
    }
  }
  return lowest(over, under);
}
