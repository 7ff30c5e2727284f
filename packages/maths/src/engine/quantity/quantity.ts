import type { Decimal as DecimalNumber } from "../numbers.js";
import { Decimal, decimalText, isDecimalText } from "../numbers.js";
import { inPlace, missingOr, QuantityError } from "../refusal.js";
import type { Place } from "../refusal.js";
import { described, PERCENT } from "./described.js";
import { quickRatio } from "./quick-ratio.js";
import type { Unit } from "./unit.js";

/** The unit behind a quantity, shared by every copy of this package; the number is that of the layout. */
export const UNIT: unique symbol = Symbol.for("thrum.unit.1");

/**
 * An amount with its unit: frozen, its exact value kept as decimal text in the unit it was given in.
 *
 * @example yards("2.5").value // "2.5"
 */
export interface Quantity<D extends string> {
  readonly dimension: D;
  readonly value: string;
  readonly unit: string;
  /** Reads the number out, in the unit named. */
  in(unit: Unit<D>): number;
  /** The whole value with the unit's symbol: "12.5 in". */
  toString(): string;
}

function told(this: Quantity<string>): string {
  return plainText(this);
}

const behaviour = {
  in(this: Quantity<string>, unit: Unit<string>): number {
    const own = unitOf(this, ["in"]);
    if (!isUnit(unit) || !areOneKind(unit, own)) requireSameDimension(own, unit, ["in", "unit"]);
    const n = own.scale[0] * unit.scale[1];
    const d = own.scale[1] * unit.scale[0];
    const quick = Number.isSafeInteger(n) && Number.isSafeInteger(d) ? quickRatio(this.value, n, d) : null;
    return quick ?? decimalIn(this, own, unit).toNumber();
  },
  toString: told,
  [Symbol.toPrimitive](this: Quantity<string>, hint: string): string {
    if (hint === "string") return plainText(this);
    throw new QuantityError({
      code: "operator",
      function: "operator",
      path: [],
      expected: "numbers",
      received: described(this),
      remedy:
        "Quantities refuse + - * / < >: use sum, difference, times, ratio or compare, or read a number with .in(unit).",
    });
  },
  [Symbol.for("nodejs.util.inspect.custom")]: told,
  [Symbol.for("Jupyter.display")](this: Quantity<string>): Readonly<Record<string, string>> {
    return { "text/plain": plainText(this) };
  },
};

/** The whole value with the unit's symbol: "12.5 in". */
export function plainText(quantity: Quantity<string>): string {
  const { symbol, dimension } = unitOf(quantity, ["toString"]);
  return [quantity.value, symbol, PERCENT.get(dimension)].filter(Boolean).join(" ");
}

/** Makes a quantity; a number too large or too fine to be written out would make one that nothing takes, so it is refused. */
export function makeQuantity<D extends string>(unit: Unit<D>, value: DecimalNumber): Quantity<D> {
  const text = decimalText(value);
  if (!isDecimalText(text)) {
    throw new QuantityError({
      code: "out-of-range",
      ...inPlace([unit.name, "amount"]),
      expected: "a number of at most 40 digits before the point and 60 after it",
      received: `the number ${value.toExponential(5)}`,
      remedy: "Such an amount is no weaver's: look at the numbers and units it comes from.",
    });
  }
  const made = Object.create(behaviour) as { -readonly [K in keyof Quantity<D>]: Quantity<D>[K] };
  made.dimension = unit.dimension;
  made.value = text;
  made.unit = unit.name;
  Object.defineProperty(made, UNIT, { value: unit });
  return Object.freeze(made);
}

/** Whether this is a unit of ours, of this copy of the package or of another. */
export function isUnit(candidate: unknown): candidate is Unit<string> {
  return typeof candidate === "function" && Object.hasOwn(candidate, UNIT) && Object.isFrozen(candidate);
}

/** The unit of a genuine quantity; null for anything else, copies and tampered ones among them. */
export function genuineUnit(candidate: unknown): Unit<string> | null {
  if (typeof candidate !== "object" || candidate === null || !Object.isFrozen(candidate)) return null;
  // What merely inherits from a quantity may carry another number than it.
  if (!Object.hasOwn(candidate, UNIT)) return null;
  const { dimension, unit: name, value, [UNIT]: unit } = candidate as Partial<Quantity<string>> & { [UNIT]?: unknown };
  const agrees = isUnit(unit) && unit.dimension === dimension && unit.name === name;
  return agrees && isDecimalText(value) ? unit : null;
}

/** The unit of a quantity, or the refusal of what is none. */
export function unitOf(quantity: unknown, where: Place): Unit<string> {
  const unit = genuineUnit(quantity);
  if (unit !== null) return unit;
  const copied = typeof quantity === "object" && quantity !== null && "dimension" in quantity && "value" in quantity;
  throw new QuantityError({
    code: copied ? "copied-quantity" : missingOr(quantity, "wrong-kind"),
    ...inPlace(where),
    expected: "a quantity",
    received: described(quantity),
    remedy: copied
      ? "A copy, as JSON or structuredClone makes it, is only data: read it back with quantityFrom(data, [units])."
      : "Make one with a unit, for example inches(21).",
  });
}

/** Whether amounts in the two can be told in each other: money of two currencies cannot, as no rate between them lasts. */
function areOneKind(one: Unit<string>, other: Unit<string>): boolean {
  return one.dimension === other.dimension && (one.dimension !== "money" || one.name === other.name);
}

/** Refuses a unit of another kind, naming both. */
export function requireSameDimension(own: Unit<string>, other: unknown, where: Place): asserts other is Unit<string> {
  if (isUnit(other) && areOneKind(other, own)) return;
  throw new QuantityError({
    code: isUnit(other) ? "wrong-kind" : missingOr(other, "unknown-unit"),
    ...inPlace(where),
    expected: own.dimension === "money" ? `money in ${own.name}` : `a unit of ${own.dimension}`,
    received: isUnit(other) ? `${other.name}, a unit of ${other.dimension}` : described(other),
    remedy: !isUnit(other)
      ? "Units are values you import, such as yards."
      : other.dimension === own.dimension
        ? "Change it to one currency first, at the rate of your day."
        : "The two are different kinds of thing.",
    params: { kind: own.dimension },
  });
}

/** The exact amount in another unit, to 40 digits. */
export function decimalIn(quantity: Quantity<string>, own: Unit<string>, unit: Unit<string>): DecimalNumber {
  const over = new Decimal(own.scale[0]).times(unit.scale[1]);
  const under = new Decimal(own.scale[1]).times(unit.scale[0]);
  return new Decimal(quantity.value).times(over).div(under);
}
