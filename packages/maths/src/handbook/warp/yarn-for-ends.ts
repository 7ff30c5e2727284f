import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface YarnForEndsInput {
  /** Wound in this yarn. */
  readonly ends: number;
  /** Of every end, waste counted in. */
  readonly warpLength: Length;
}

/**
 * Length of yarn in so many ends of one warp.
 *
 * @formula yarn = ends × warpLength
 * @units ends; a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example yarnForEnds({ ends: 414, warpLength: yards(5) }).in(yards) // 2070
 */
export const yarnForEnds: Calculation<YarnForEndsInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnForEnds",
  inputs: {
    ends: whole("ends", "wound in this yarn", { atLeast: 0 }),
    warpLength: positive(Length, "of every end, waste counted in"),
  },
  formula: "yarn = ends × warpLength",
  result: atLeastZero(Length, "of yarn"),
  forUse: "up",
  source: taylor1909,
}));
