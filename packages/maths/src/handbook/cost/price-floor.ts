import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Money } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface PriceFloorInput {
  /** Of the piece, all costs in it. */
  readonly cost: Money;
  /** Of the price, kept by the seller, with all discounts and fees. */
  readonly commission: Loss;
}

/**
 * Least price that leaves the cost when the seller has kept a part of it. Nothing here says what a piece is worth.
 *
 * @formula price = cost ÷ (1 − commission)
 * @units money; a percentage lost → money
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source wolfensberger-1921
 * @example priceFloor({ cost: currency("USD")(35), commission: percentLost(30) }).toString() // "50 USD"
 */
export const priceFloor: Calculation<PriceFloorInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "priceFloor",
  inputs: {
    cost: positive(Money, "of the piece, all costs in it"),
    commission: loss("of the price, kept by the seller, with all discounts and fees"),
  },
  formula: "price = cost ÷ (1 − commission)",
  result: positive(Money, "below which the piece is sold at a loss"),
  resultIn: "cost",
  forUse: "up",
  source: wolfensberger1921,
}));
