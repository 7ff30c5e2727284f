import { atLeastZero, calculation, listOf } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Money } from "../../units/index.js";

export interface CostsTogetherInput {
  /** One cost of the whole warp. */
  readonly costs: readonly Money[];
}

/**
 * Several costs of one warp as one.
 *
 * @formula together = Σcosts
 * @units a list, each money → money
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example costsTogether({ costs: [currency("EUR")(64), currency("EUR")(90)] }).toString() // "154 EUR"
 */
export const costsTogether: Calculation<CostsTogetherInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "costsTogether",
  inputs: {
    costs: listOf(atLeastZero(Money, "one cost of the whole warp")),
  },
  formula: "together = Σcosts",
  result: atLeastZero(Money, "in all"),
  resultIn: "costs",
  source: commonPractice,
}));
