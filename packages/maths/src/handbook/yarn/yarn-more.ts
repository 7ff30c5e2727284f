import { atLeastZero, calculation, noneOrMore, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface YarnMoreInput {
  /** Of this yarn. */
  readonly ends: number;
  /** Of every end, for one piece more. */
  readonly warpMore: Length;
  /** Of this yarn, for one piece more. */
  readonly wefts: readonly Length[];
}

/**
 * Length of one yarn that a piece more takes, in the warp and in its wefts.
 *
 * @formula more = ends × warpMore + Σwefts
 * @units ends; a length; a list, each a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example yarnMore({ ends: 36, warpMore: inches(21), wefts: [inches(244)] }).in(inches) // 1000
 */
export const yarnMore: Calculation<YarnMoreInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnMore",
  inputs: {
    ends: whole("ends", "of this yarn", { atLeast: 0 }),
    warpMore: atLeastZero(Length, "of every end, for one piece more"),
    wefts: noneOrMore(atLeastZero(Length, "of this yarn, for one piece more")),
  },
  formula: "more = ends × warpMore + Σwefts",
  result: atLeastZero(Length, "of this yarn"),
  source: commonPractice,
}));
