import { Decimal, kept, shown } from "../../engine/numbers.js";
import { described, genuineUnit, isUnit, makeQuantity } from "../../engine/quantity/index.js";
import type { Quantity, Unit } from "../../engine/quantity/index.js";
import { missingOr, refuse } from "../../engine/refusal.js";
import type { DirectCount, IndirectCount } from "../../units/index.js";

type CountDimension = "mass per length" | "length per mass";

/** A count in another system, and the one line of arithmetic that takes it there. */
export interface CountConversion<Q> {
  readonly count: Q;
  /** "590.541 ÷ 20 Ne ≈ 29.5271 tex" */
  readonly says: string;
}

function isCountUnit(unit: unknown): unit is Unit<string> {
  return isUnit(unit) && (unit.dimension === "mass per length" || unit.dimension === "length per mass");
}

const REMEDY = "Counts are of a system: tex(30), cottonCount(20).";

/**
 * A yarn count in another system. Two indirect systems, or two direct ones, differ by a factor; from one kind to the
 * other the product of the two counts is constant, so that the constant is divided by the count. As a calculation, to be
 * explained, checked or put into a cell, it is countInSystem, countInSystemDirect, directFromIndirect or indirectFromDirect.
 *
 * @param count any count above zero
 * @param unit the system wanted
 * @throws QuantityError "wrong-kind" for what is no count or no count system, "out-of-range" for a count of zero or less
 * @example convertCount(cottonCount(20), tex).says // "590.541 ÷ 20 Ne ≈ 29.5271 tex"
 */
export function convertCount<D extends CountDimension>(
  count: DirectCount | IndirectCount,
  unit: Unit<D>,
): CountConversion<Quantity<D>> {
  return convertedCount("convertCount", "count", count, unit);
}

/** What convertCount gives; what is no count is refused by the function and the input that took it. */
export function convertedCount<D extends CountDimension>(
  by: string,
  field: string,
  count: DirectCount | IndirectCount,
  unit: Unit<D>,
): CountConversion<Quantity<D>> {
  const own = genuineUnit(count);
  if (!isCountUnit(own))
    return refuse(missingOr(count, "wrong-kind"), [by, field], "a yarn count", described(count), REMEDY);
  if (!isCountUnit(unit))
    return refuse(missingOr(unit, "wrong-kind"), [by, "unit"], "a count system", described(unit), REMEDY);
  const value = new Decimal(count.value);
  if (value.lte(0)) return refuse("out-of-range", [by, field], "a count above zero", described(count), REMEDY);
  const crosses = own.dimension !== unit.dimension;
  // One division at the end, so that equal yarns of two systems come out equal to the last digit.
  const over = new Decimal(own.scale[crosses ? 1 : 0]).times(unit.scale[1]);
  const under = new Decimal(own.scale[crosses ? 0 : 1]).times(unit.scale[0]);
  const constant = kept(over.div(under));
  const made = kept(crosses ? over.div(under.times(value)) : over.times(value).div(under));
  const [factor, answer] = [shown(constant), shown(made)];
  const given = `${count.value} ${own.symbol}`;
  const sum = crosses ? `${factor.text} ÷ ${given}` : `${given} × ${factor.text}`;
  const says = `${sum} ${answer.exact && factor.exact ? "=" : "≈"} ${answer.text} ${unit.symbol}`;
  return Object.freeze({ count: makeQuantity(unit, made), says });
}
