import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { leigh2023 } from "../../sources/index.js";
import { Length, Money } from "../../units/index.js";

export interface YarnCostByLengthInput {
  /** Used, the waste in it. */
  readonly yarn: Length;
  /** Of one package. */
  readonly price: Money;
  /** On one package. */
  readonly packageLength: Length;
}

/**
 * Cost of a length of yarn sold by the ball, the cone or the skein.
 *
 * @formula cost = yarn ÷ packageLength × price
 * @units a length; money → money
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source leigh-2023
 * @example yarnCostByLength({ yarn: yards(1854), price: currency("USD")(4), packageLength: yards(400) }).toString() // "18.54 USD"
 */
export const yarnCostByLength: Calculation<YarnCostByLengthInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "yarnCostByLength",
  inputs: {
    yarn: positive(Length, "used, the waste in it"),
    price: positive(Money, "of one package"),
    packageLength: positive(Length, "on one package"),
  },
  formula: "cost = yarn ÷ packageLength × price",
  result: positive(Money, "for the yarn used, the rest of the last package left out"),
  resultIn: "price",
  forUse: "up",
  source: leigh2023,
}));
