import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount, Length, Mass } from "../../units/index.js";

export interface YarnMassInput {
  /** Of the yarn. */
  readonly length: Length;
  /** Of the finished thread. */
  readonly count: IndirectCount;
}

/**
 * Mass of a length of yarn, from its indirect count.
 *
 * @formula mass = length ÷ count
 * @units a length; an indirect count → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example yarnMass({ length: yards(3360), count: cottonCount(4) }).in(pounds) // 1
 */
export const yarnMass: Calculation<YarnMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "yarnMass",
  inputs: {
    length: atLeastZero(Length, "of the yarn"),
    count: positive(IndirectCount, "of the finished thread"),
  },
  formula: "mass = length ÷ count",
  result: atLeastZero(Mass, "of that length"),
  forUse: "up",
  source: taylor1909,
}));
