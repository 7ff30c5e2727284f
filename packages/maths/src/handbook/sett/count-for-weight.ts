import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount, Mass } from "../../units/index.js";

export interface CountForWeightInput {
  /** Of the yarn in the cloth there is. */
  readonly count: IndirectCount;
  /** Of a piece of that cloth. */
  readonly mass: Mass;
  /** Of a piece of the new cloth, of the same size. */
  readonly newMass: Mass;
}

/**
 * Count of the yarn that makes the same cloth heavier or lighter, just as firm: as the square of the weights, turned over.
 *
 * @formula
 * ```text
 * times = mass ÷ newMass
 * newCount = count × times × times
 * ```
 * @units an indirect count; a mass → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example countForWeight({ count: cottonCount(45), mass: pounds(10), newMass: pounds(15) }).in(cottonCount) // 20
 */
export const countForWeight: Calculation<CountForWeightInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "countForWeight",
  inputs: {
    count: positive(IndirectCount, "of the yarn in the cloth there is"),
    mass: positive(Mass, "of a piece of that cloth"),
    newMass: positive(Mass, "of a piece of the new cloth, of the same size"),
  },
  formula: `
    times = mass ÷ newMass
    newCount = count × times × times`,
  result: positive(IndirectCount, "of the new yarn"),
  resultIn: "count",
  source: taylor1909,
}));
