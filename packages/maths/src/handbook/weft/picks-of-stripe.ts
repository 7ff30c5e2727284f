import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length, PicksPerLength } from "../../units/index.js";

export interface PicksOfStripeInput {
  /** Of the stripe, counted where the picks were. */
  readonly wovenLength: Length;
  /** To the length, counted at the loom or on the cloth. */
  readonly picks: PicksPerLength;
}

/**
 * Whole picks of a stripe given by its length, the nearest number; a half goes up.
 *
 * @formula picksInStripe = nearest(wovenLength × picks)
 * @units a length; a number of picks → picks
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example picksOfStripe({ wovenLength: inches("4.5"), picks: picksPerInch(9) }) // 41
 */
export const picksOfStripe: Calculation<PicksOfStripeInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "picksOfStripe",
  inputs: {
    wovenLength: positive(Length, "of the stripe, counted where the picks were"),
    picks: positive(PicksPerLength, "to the length, counted at the loom or on the cloth"),
  },
  formula: "picksInStripe = nearest(wovenLength × picks)",
  result: whole("picks", "of the stripe", { atLeast: 0 }),
  source: commonPractice,
}));
