import type { Decimal } from "../numbers.js";
import { amountFrom } from "../numbers.js";
import { missingOr, refuse } from "../refusal.js";
import { UNIT } from "../looked-at.js";
import { described, setBase } from "./described.js";
import { ourUnit } from "./genuine.js";
import { makeQuantity } from "./quantity.js";
import type { Quantity } from "./quantity.js";
import { scaleOf } from "./unit-size.js";
import type { CompoundUnit, SimpleUnit } from "./unit-size.js";

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
  /** What a percentage is taken of, as it stands behind the sign: "lost"; null for what is none. */
  readonly base: string | null;
  /** What to do instead where an amount is told in no other unit of its kind, as with money; null where it is. */
  readonly alone: string | null;
}

/** Defines a unit from its exact size. Every factor but the seeds is worked out from another unit's. */
export function unit<D extends string>(definition: SimpleUnit<D> | CompoundUnit<D>): Unit<D> {
  const { dimension, name, symbol, base = null, alone = null } = definition;
  if (base !== null) setBase(dimension, base);
  const make = (amount: number | string): Quantity<D> => makeQuantity(made, readAmount(name, amount));
  const shown = (value: unknown): PropertyDescriptor => ({ value, enumerable: true });
  const hidden = (value: unknown): PropertyDescriptor => ({ value });
  const made = Object.defineProperties(make, {
    dimension: shown(dimension),
    name: shown(name),
    symbol: shown(symbol),
    scale: shown(Object.freeze(scaleOf(definition))),
    of: shown("of" in definition ? Object.freeze(definition.of) : (definition.size[2]?.of ?? null)),
    base: shown(base),
    alone: shown(alone),
    toString: hidden(() => name),
    toJSON: hidden(() => ({ unit: name })),
    [UNIT]: hidden(true),
    [Symbol.for("nodejs.util.inspect.custom")]: hidden(() => `${name} (${symbol})`),
  }) as unknown as Unit<D>;
  return ourUnit(Object.freeze(made));
}

function readAmount(name: string, amount: number | string): Decimal {
  const read = amountFrom(amount);
  if (read === null) {
    const isText = typeof amount === "string";
    const isFinite = Number.isFinite(amount);
    refuse(
      isFinite
        ? "out-of-range"
        : isText || typeof amount === "number"
          ? "not-a-number"
          : missingOr(amount, "wrong-kind"),
      [name, "amount"],
      isFinite ? "a number of at most 60 digits" : 'a finite number, or text such as "12.5" or "3 1/2"',
      described(amount),
      "To turn one unit into another write inUnit(quantity, unit); to read text write lengthFrom or massFrom.",
    );
  }
  return read;
}
