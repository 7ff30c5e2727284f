import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Length, Money } from "../../units/index.js";

export interface CostOverLengthInput {
  /** Of the whole warp, whatever its length. */
  readonly cost: Money;
  /** That bears its part. */
  readonly length: Length;
  /** Of the whole warp. */
  readonly warpLength: Length;
}

/**
 * Part of a cost paid once for a warp, such as joining it, that falls on a length of it: the longer the warp, the less.
 *
 * @formula part = cost × length ÷ warpLength
 * @units money; a length → money
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source wolfensberger-1921
 * @example costOverLength({ cost: currency("USD")("0.9945"), length: metres(100), warpLength: metres(300) }).toString() // "0.3315 USD"
 */
export const costOverLength: Calculation<CostOverLengthInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "costOverLength",
  inputs: {
    cost: positive(Money, "of the whole warp, whatever its length"),
    length: positive(Length, "that bears its part"),
    warpLength: positive(Length, "of the whole warp"),
  },
  formula: "part = cost × length ÷ warpLength",
  result: positive(Money, "borne by the length"),
  resultIn: "cost",
  forUse: "up",
  source: wolfensberger1921,
}));
