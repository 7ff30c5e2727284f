import { amountFrom, Decimal, kept } from "../numbers.js";
import type { Decimal as DecimalNumber } from "../numbers.js";
import { refuse } from "../refusal.js";
import type { Place } from "../refusal.js";
import { described } from "./described.js";
import { requireSameDimension } from "./genuine.js";
import { decimalOf, keptIn, makeQuantity, ownUnit } from "./quantity.js";
import type { Quantity } from "./quantity.js";
import type { Unit } from "./unit.js";

/** Two amounts nearer than this part of them differ only by what division left over. */
const RESIDUE = "1e-30";

/** Both amounts in the unit of the first. */
function inFirstUnit(
  a: Quantity<string>,
  b: Quantity<string>,
  where: Place,
): readonly [Unit<string>, DecimalNumber, DecimalNumber] {
  const unit = ownUnit(a, where);
  const other = ownUnit(b, where);
  requireSameDimension(unit, other, where);
  return [unit, decimalOf(a), unit === other ? decimalOf(b) : keptIn(b, other, unit)];
}

/**
 * The same quantity written in another unit.
 *
 * @param quantity any quantity
 * @param unit a unit of the same kind
 * @throws QuantityError "wrong-kind" for a unit of another kind
 * @example inUnit(inches(36), yards).value // "1"
 */
export function inUnit<D extends string>(quantity: Quantity<D>, unit: Unit<D>): Quantity<D> {
  const own = ownUnit(quantity, ["inUnit", "quantity"]);
  requireSameDimension(own, unit, ["inUnit", "unit"]);
  return makeQuantity(unit, keptIn(quantity, own, unit));
}

/**
 * The sum of quantities of one kind, in the unit of the first.
 *
 * @param first the one whose unit the sum takes
 * @param others any number more of the same kind
 * @throws QuantityError "wrong-kind" when a kind differs
 * @example sum(feet(2), inches(6)).value // "2.5"
 */
export function sum<D extends string>(first: Quantity<D>, ...others: readonly NoInfer<Quantity<D>>[]): Quantity<D> {
  const unit = ownUnit(first, ["sum", "first"]) as Unit<D>;
  let total = decimalOf(first);
  for (const other of others) total = total.plus(inFirstUnit(first, other, ["sum", "others"])[2]);
  return makeQuantity(unit, total);
}

/**
 * What is left of one quantity when another of its kind is taken away, in the unit of the first; it may be negative.
 *
 * @param from the one taken from
 * @param taken the one taken away
 * @throws QuantityError "wrong-kind" when the kinds differ
 * @example difference(inches(30), inches(12)).value // "18"
 */
export function difference<D extends string>(from: Quantity<D>, taken: NoInfer<Quantity<D>>): Quantity<D> {
  const [unit, a, b] = inFirstUnit(from, taken, ["difference", "taken"]);
  return makeQuantity(unit as Unit<D>, a.minus(b));
}

/**
 * A quantity taken so many times, or a part of it: an eighth of it is `times(quantity, "1/8")`.
 *
 * @param quantity any quantity
 * @param factor a finite number, or text of a decimal or a fraction
 * @throws QuantityError "not-a-number" when the factor is none
 * @example times(inches("10.5"), 6).value // "63"
 */
export function times<D extends string>(quantity: Quantity<D>, factor: number | string): Quantity<D> {
  const unit = ownUnit(quantity, ["times", "quantity"]) as Unit<D>;
  const by = amountFrom(factor);
  if (by === null) {
    const isText = typeof factor === "string";
    refuse(
      "not-a-number",
      ["times", "factor"],
      'a finite number, or text such as "2.5", "1/8" or "2 1/2"',
      described(factor),
      isText
        ? "Write a number, or a whole number over another that is not zero."
        : "Two quantities are not multiplied here: use a calculation of the handbook.",
    );
  }
  const product = decimalOf(quantity).times(by);
  return makeQuantity(unit, typeof factor === "string" && factor.includes("/") ? kept(product) : product);
}

/**
 * How many times one quantity holds another of its kind: a plain number.
 *
 * @param over the one divided
 * @param under the one it is divided by, not zero
 * @throws QuantityError "wrong-kind" when the kinds differ, "no-answer" when the second is zero
 * @example ratio(yards(1), inches(12)) // 3
 */
export function ratio<D extends string>(over: Quantity<D>, under: NoInfer<Quantity<D>>): number {
  const where: Place = ["ratio", "under"];
  const upper = ownUnit(over, ["ratio", "over"]);
  const lower = ownUnit(under, where);
  requireSameDimension(upper, lower, where);
  const divisor = new Decimal(under.value).times(lower.scale[0]).times(upper.scale[1]);
  if (divisor.isZero()) {
    refuse(
      "no-answer",
      ["ratio", "under"],
      "something other than zero",
      described(under),
      "Nothing can be divided by zero.",
    );
  }
  return new Decimal(over.value).times(upper.scale[0]).times(lower.scale[1]).div(divisor).toNumber();
}

/**
 * The order of two quantities of one kind: -1, 0 or 1, fit for `.sort(compare)`.
 *
 * @param a one quantity
 * @param b another of its kind
 * @throws QuantityError "wrong-kind" when the kinds differ
 * @example compare(yards(1), inches(35)) // 1
 */
export function compare<D extends string>(a: Quantity<D>, b: NoInfer<Quantity<D>>): -1 | 0 | 1 {
  const [, x, y] = inFirstUnit(a, b, ["compare", "b"]);
  const residue = Decimal.max(x.abs(), y.abs()).times(RESIDUE);
  return x.minus(y).abs().lte(residue) ? 0 : (x.comparedTo(y) as -1 | 1);
}

/**
 * Whether two quantities of one kind are the same amount, whatever their units.
 *
 * @param a one quantity
 * @param b another of its kind
 * @throws QuantityError "wrong-kind" when the kinds differ
 * @example equal(feet(1), inches(12)) // true
 */
export function equal<D extends string>(a: Quantity<D>, b: NoInfer<Quantity<D>>): boolean {
  return compare(a, b) === 0;
}
