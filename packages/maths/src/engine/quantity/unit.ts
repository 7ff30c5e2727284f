import type { Decimal } from "../numbers.js";
import { decimalFrom } from "../numbers.js";
import { inPlace, missingOr, QuantityError } from "../refusal.js";
import { described } from "./described.js";
import { makeQuantity, UNIT } from "./quantity.js";
import type { Quantity } from "./quantity.js";

/** What a compound unit counts: so much length, so much mass. */
export interface UnitParts {
  readonly length: readonly [amount: number, unit: Unit<"length">] | null;
  readonly mass: readonly [amount: number, unit: Unit<"mass">] | null;
}

/**
 * A unit makes an amount when called and reads one when handed to `.in`.
 *
 * @example yards(2).in(inches) // 72
 */
export interface Unit<D extends string> {
  (amount: number | string): Quantity<D>;
  readonly dimension: D;
  /** The name it is imported by. */
  readonly name: string;
  readonly symbol: string;
  /** Its size as an exact fraction, in metres, grams or what follows from them. */
  readonly scale: readonly [numerator: number, denominator: number];
  readonly of: UnitParts | null;
}

interface SimpleUnit<D extends string> {
  readonly dimension: D;
  readonly name: string;
  readonly symbol: string;
  /** An exact fraction of the unit named third, or of the metre, the gram or one. */
  readonly size: readonly [numerator: number, denominator: number, of?: Unit<D>];
}

interface CompoundUnit<D extends string> {
  readonly dimension: D;
  readonly name: string;
  readonly symbol: string;
  readonly of: UnitParts;
}

type Fraction = readonly [bigint, bigint];

/** How often length and mass stand in a dimension: "length per mass" is [1, -1], "mass per area" [-2, 1]. */
export function powersOf(dimension: string): readonly [length: number, mass: number] {
  const [over = "", under = ""] = dimension.split(" per ");
  const count = (word: string): number => Number(over === word) - Number(under === word);
  return [count("length") + 2 * count("area"), count("mass")];
}

function fractionOf([amount, { scale }]: readonly [number, { scale: readonly [number, number] }]): Fraction {
  return [BigInt(amount) * BigInt(scale[0]), BigInt(scale[1])];
}

function product(fractions: readonly (readonly [Fraction, number])[]): Fraction {
  let [n, d]: Fraction = [1n, 1n];
  for (const [[a, b], power] of fractions) {
    const [times, by] = power > 0 ? [a, b] : [b, a];
    for (let left = Math.abs(power); left > 0; left -= 1) [n, d] = [n * times, d * by];
  }
  return [n, d];
}

function scaleOf<D extends string>(definition: SimpleUnit<D> | CompoundUnit<D>): readonly [number, number] {
  let fraction: Fraction;
  if ("of" in definition) {
    const [length, mass] = powersOf(definition.dimension);
    fraction = product([
      [definition.of.length ? fractionOf(definition.of.length) : [1n, 1n], length],
      [definition.of.mass ? fractionOf(definition.of.mass) : [1n, 1n], mass],
    ]);
  } else {
    const [n, d, base] = definition.size;
    fraction = base ? [BigInt(n * base.scale[0]), BigInt(d * base.scale[1])] : [BigInt(n), BigInt(d)];
  }
  let [a, b] = fraction;
  while (b > 0n) [a, b] = [b, a % b];
  return Object.freeze([Number(fraction[0] / a), Number(fraction[1] / a)] as const);
}

/** Defines a unit from its exact size. Every factor but the seeds is worked out from another unit's. */
export function unit<D extends string>(definition: SimpleUnit<D> | CompoundUnit<D>): Unit<D> {
  const { dimension, name, symbol } = definition;
  const make = (amount: number | string): Quantity<D> => makeQuantity(made, readAmount(name, amount));
  const hidden = (value: unknown): PropertyDescriptor => ({ value, enumerable: false });
  const made = Object.defineProperties(make, {
    dimension: { value: dimension, enumerable: true },
    name: { value: name, enumerable: true },
    symbol: { value: symbol, enumerable: true },
    scale: { value: scaleOf(definition), enumerable: true },
    of: {
      value: "of" in definition ? Object.freeze(definition.of) : (definition.size[2]?.of ?? null),
      enumerable: true,
    },
    toString: hidden(() => name),
    toJSON: hidden(() => ({ unit: name })),
    [UNIT]: hidden(true),
    [Symbol.for("nodejs.util.inspect.custom")]: hidden(() => `${name} (${symbol})`),
  }) as unknown as Unit<D>;
  return Object.freeze(made);
}

function readAmount(name: string, amount: number | string): Decimal {
  const read = decimalFrom(amount);
  if (read === null) {
    const isText = typeof amount === "string";
    const isFinite = Number.isFinite(amount);
    throw new QuantityError({
      code: isFinite
        ? "out-of-range"
        : isText || typeof amount === "number"
          ? "not-a-number"
          : missingOr(amount, "wrong-kind"),
      ...inPlace([name, "amount"]),
      expected: isFinite ? "a number of at most 60 digits" : "a finite number or decimal text such as 12.5",
      received: described(amount),
      remedy: "To turn one unit into another write inUnit(quantity, unit); to read text write lengthFrom or massFrom.",
    });
  }
  return read;
}
