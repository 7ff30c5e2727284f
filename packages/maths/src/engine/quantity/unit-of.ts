import { decimalOf, genuineUnit, ownUnit } from "./quantity.js";
import type { Quantity } from "./quantity.js";
import type { Unit } from "./unit.js";

/** Whether this is a quantity of ours, whole and unchanged; a copy, as JSON makes it, is none. */
export function isQuantity(candidate: unknown): candidate is Quantity<string> {
  return genuineUnit(candidate) !== null;
}

/**
 * The unit a quantity was made in.
 *
 * @param quantity any amount with its unit
 * @throws QuantityError "copied-quantity", "wrong-kind"
 * @example unitOf(yards(2)).symbol // "yd"
 */
export function unitOf<D extends string>(quantity: Quantity<D>): Unit<D> {
  return ownUnit(quantity, ["unitOf", "quantity"]) as Unit<D>;
}

/**
 * Whether a quantity is more than nothing (1), nothing (0) or less than nothing (−1); no number is read off.
 *
 * @param quantity any amount with its unit
 * @throws QuantityError "copied-quantity", "wrong-kind"
 * @example sign(difference(inches(3), inches(5))) // -1
 */
export function sign(quantity: Quantity<string>): -1 | 0 | 1 {
  ownUnit(quantity, ["sign", "quantity"]);
  const value = decimalOf(quantity);
  if (value.isZero()) return 0;
  return value.isNegative() ? -1 : 1;
}
