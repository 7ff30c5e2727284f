import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { osterkampShrinkage } from "../../sources/index.js";
import { Length, percentLost } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface LossFromMeasuresInput {
  /** The longer measure. */
  readonly before: Length;
  /** The shorter measure of the same piece. */
  readonly after: Length;
}

/**
 * Percentage lost between two measures of one thing, of the first of them.
 *
 * @formula loss = (before − after) ÷ before
 * @units a length → a percentage lost
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source osterkamp-shrinkage
 * @example lossFromMeasures({ before: inches(10), after: inches("8.5") }).in(percentLost) // 15
 */
export const lossFromMeasures: Calculation<LossFromMeasuresInput, Loss> = /* @__PURE__ */ calculation(() => ({
  name: "lossFromMeasures",
  inputs: {
    before: positive(Length, "the longer measure"),
    after: positive(Length, "the shorter measure of the same piece"),
  },
  formula: "loss = (before − after) ÷ before",
  result: loss("of the first measure"),
  resultIn: [percentLost],
  source: osterkampShrinkage,
  slips: [{ says: "takes the loss from the shorter measure", instead: "loss = (before − after) ÷ after" }],
}));
