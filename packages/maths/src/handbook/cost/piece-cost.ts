import { calculation, listOf, partsToo, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Money } from "../../units/index.js";

export interface PieceCostInput {
  /** One cost of the whole warp: yarn with its waste, work with its finishing, overhead, labels. */
  readonly costs: readonly Money[];
  /** Fit for sale, or yards sold; a part of one counted as its part. */
  readonly pieces: number;
}

/**
 * Cost of one piece: all that the warp cost, waste and finishing in it, shared over the pieces fit for sale.
 *
 * @formula cost = Σcosts ÷ pieces
 * @units a list, each money; pieces → money
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source wolfensberger-1921
 * @example pieceCost({ costs: [currency("EUR")(64), currency("EUR")(90)], pieces: 11 }).toString() // "14 EUR"
 */
export const pieceCost: Calculation<PieceCostInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "pieceCost",
  inputs: {
    costs: listOf(
      positive(Money, "one cost of the whole warp: yarn with its waste, work with its finishing, overhead, labels"),
    ),
    pieces: partsToo("pieces", "fit for sale, or yards sold; a part of one counted as its part"),
  },
  formula: "cost = Σcosts ÷ pieces",
  result: positive(Money, "of one piece"),
  resultIn: "costs",
  forUse: "up",
  source: wolfensberger1921,
}));
