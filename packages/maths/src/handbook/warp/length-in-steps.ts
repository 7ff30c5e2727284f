import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface LengthInStepsInput {
  /** Of warp. */
  readonly needed: Length;
  /** Of one step, with the yarn on its path. */
  readonly step: Length;
}

/**
 * Length of a warp that can only be wound in whole steps, from peg to peg or by the arms of a reel.
 *
 * @formula
 * ```text
 * steps = roundUp(needed ÷ step)
 * length = steps × step
 * ```
 * @units a length → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example lengthInSteps({ needed: inches(200), step: inches(27) }).in(inches) // 216
 */
export const lengthInSteps: Calculation<LengthInStepsInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "lengthInSteps",
  inputs: {
    needed: positive(Length, "of warp"),
    step: positive(Length, "of one step, with the yarn on its path"),
  },
  formula: `
    steps = roundUp(needed ÷ step)
    length = steps × step`,
  result: positive(Length, "to wind"),
  source: commonPractice,
}));
