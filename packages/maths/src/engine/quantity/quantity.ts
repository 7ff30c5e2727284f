import type { Decimal as DecimalNumber } from "../numbers.js";
import { Decimal, decimalText, isDecimalText } from "../numbers.js";
import { missingOr, refuse } from "../refusal.js";
import type { Place } from "../refusal.js";
import { UNIT } from "../looked-at.js";
import { described, toldAs } from "./described.js";
import { factorBetween, keptTimesFactor, timesFactor } from "./factor.js";
import { isUnit, requireSameDimension } from "./genuine.js";
import { refuseOperator } from "./refuse-operator.js";
import { digitsOf, quickRatio } from "./quick-ratio.js";
import type { Digits } from "./quick-ratio.js";
import type { Unit } from "./unit.js";

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

const CONSTRUCTOR = "constructor";
/** What has its private fields was made here and frozen. A bundle may leave the call out, as it may not leave out the class. */
function quantityClass() {
  return class Made<D extends string> implements Quantity<D> {
    readonly dimension: D;
    readonly value: string;
    readonly unit: string;
    readonly #unit: Unit<D>;
    readonly #decimal: DecimalNumber;
    /** Its digits as a whole number and the power of ten under them, worked out when it is first told in another unit. */
    #digits: Digits | null | undefined;

    constructor(unit: Unit<D>, value: string, decimal: DecimalNumber) {
      this.dimension = unit.dimension;
      this.value = value;
      this.unit = unit.name;
      this.#unit = unit;
      this.#decimal = decimal;
      Object.freeze(this);
    }

    static unitOf(candidate: object): Unit<string> | null {
      return #unit in candidate ? candidate.#unit : null;
    }
    static decimalOf(candidate: object): DecimalNumber | null {
      return #unit in candidate ? candidate.#decimal : null;
    }

    in(unit: Unit<D>): number {
      const own = ownUnit(this, ["in"]);
      requireSameDimension(own, unit, ["in", "unit"]);
      if (#unit in this) {
        if (this.#digits === undefined) this.#digits = digitsOf(this.value);
        const quick = this.#digits === null ? null : quickRatio(this.#digits, own.scale, unit.scale);
        if (quick !== null) return quick;
      }
      return timesFactor(decimalOf(this), factorBetween(own, unit)).toNumber();
    }

    /** Nobody makes another by way of one at hand. */
    get [CONSTRUCTOR](): typeof Object {
      return Object;
    }

    get [UNIT](): Unit<string> | null {
      return Made.unitOf(this);
    }

    toString(): string {
      return plainText(this);
    }
    [Symbol.toPrimitive](hint: string): string {
      if (hint === "string") return plainText(this);
      refuseOperator(this);
    }

    [Symbol.for("nodejs.util.inspect.custom")](): string {
      return plainText(this);
    }
    [Symbol.for("Jupyter.display")](): Readonly<Record<string, string>> {
      return { "text/plain": plainText(this) };
    }
  };
}
const Made = /* @__PURE__ */ quantityClass();

/** The whole value with the unit's symbol: "12.5 in". */
function plainText(quantity: Quantity<string>): string {
  return `${quantity.value} ${toldAs(ownUnit(quantity, ["toString"]))}`;
}

/** Makes a quantity; a number too large or too fine to be written out would make one that nothing takes, so it is refused. */
export function makeQuantity<D extends string>(unit: Unit<D>, value: DecimalNumber): Quantity<D> {
  const text = decimalText(value);
  if (!value.isFinite() || (text.length > 40 && !isDecimalText(text))) {
    const expected = "a number of at most 40 digits before the point and 60 after it";
    const remedy = "Such an amount is no weaver's: look at the numbers and units it comes from.";
    refuse("out-of-range", [unit.name, "amount"], expected, `the number ${value.toExponential(5)}`, remedy);
  }
  return new Made(unit, text, value.isZero() ? new Decimal(0) : value);
}

/** The unit of a genuine quantity; null for anything else, copies and tampered ones among them. */
export function genuineUnit(candidate: unknown): Unit<string> | null {
  if (typeof candidate !== "object" || candidate === null) return null;
  const known = Made.unitOf(candidate);
  if (known !== null) return known;
  // One of another copy of the package tells its unit; what merely inherits from it is told of none.
  if (!Object.isFrozen(candidate)) return null;
  const { dimension, unit: name, value, [UNIT]: unit } = candidate as Partial<Quantity<string>> & { [UNIT]?: unknown };
  const agrees = isUnit(unit) && unit.dimension === dimension && unit.name === name;
  return agrees && isDecimalText(value) ? unit : null;
}

/** The exact value of a genuine quantity, in its unit. */
export function decimalOf(quantity: Quantity<string>): DecimalNumber {
  return Made.decimalOf(quantity) ?? new Decimal(quantity.value);
}

/** The unit of a quantity, or the refusal of what is none. */
export function ownUnit(quantity: unknown, where: Place): Unit<string> {
  const unit = genuineUnit(quantity);
  if (unit !== null) return unit;
  const copied = typeof quantity === "object" && quantity !== null && "dimension" in quantity && "value" in quantity;
  refuse(
    copied ? "copied-quantity" : missingOr(quantity, "wrong-kind"),
    where,
    "a quantity",
    described(quantity),
    copied
      ? "A copy, as JSON or structuredClone makes it, is only data: read it back with quantityFrom(data, [units])."
      : "Make one with a unit, for example inches(21).",
  );
}

/** The amount in another unit, in the digits a quantity keeps. */
export function keptIn(quantity: Quantity<string>, own: Unit<string>, unit: Unit<string>): DecimalNumber {
  return keptTimesFactor(decimalOf(quantity), factorBetween(own, unit));
}
