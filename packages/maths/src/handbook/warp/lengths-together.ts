import { atLeastZero, calculation, listOf } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface LengthsTogetherInput {
  /** One of those that are put together. */
  readonly lengths: readonly Length[];
}

/**
 * Several lengths as one.
 *
 * @formula together = Σlengths
 * @units a list, each a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example lengthsTogether({ lengths: [yards(2), inches(18)] }).in(inches) // 90
 */
export const lengthsTogether: Calculation<LengthsTogetherInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "lengthsTogether",
  inputs: {
    lengths: listOf(atLeastZero(Length, "one of those that are put together")),
  },
  formula: "together = Σlengths",
  result: atLeastZero(Length, "in all"),
  source: commonPractice,
}));
