import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { DirectCount, Length, Mass } from "../../units/index.js";

export interface YarnMassDirectInput {
  /** Of the yarn. */
  readonly length: Length;
  /** Of the finished thread. */
  readonly count: DirectCount;
}

/**
 * Mass of a length of yarn, from its direct count.
 *
 * @formula mass = length × count
 * @units a length; a direct count → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example yarnMassDirect({ length: kilometres(2), count: tex(30) }).in(grams) // 60
 */
export const yarnMassDirect: Calculation<YarnMassDirectInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "yarnMassDirect",
  inputs: {
    length: atLeastZero(Length, "of the yarn"),
    count: positive(DirectCount, "of the finished thread"),
  },
  formula: "mass = length × count",
  result: atLeastZero(Mass, "of that length"),
  forUse: "up",
  source: taylor1909,
}));
