import { calculation, positive, unitFor } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";

export interface CountInSystemInput {
  /** Of the yarn, in any indirect system. */
  readonly count: IndirectCount;
  /** The count system wanted. */
  readonly system: Unit<"length per mass">;
}

/**
 * An indirect count in another indirect system: so many of the hanks of that system weigh what it weighs them by.
 *
 * @formula inSystem = count × system.mass ÷ system.length
 * @units an indirect count; a unit for an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source davis-1920
 * @example countInSystem({ count: cottonCount(20), system: worstedCount }).in(worstedCount) // 30
 */
export const countInSystem: Calculation<CountInSystemInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "countInSystem",
  inputs: {
    count: positive(IndirectCount, "of the yarn, in any indirect system"),
    system: unitFor(IndirectCount, "the count system wanted"),
  },
  formula: "inSystem = count × system.mass ÷ system.length",
  result: positive(IndirectCount, "in the system wanted"),
  resultIn: "system",
  source: davis1920,
}));
