import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Mass, Money } from "../../units/index.js";

export interface YarnCostInput {
  /** Used, the waste in it. */
  readonly yarn: Mass;
  /** Of so much yarn as it is sold by. */
  readonly price: Money;
  /** That the price is for. */
  readonly priceMass: Mass;
}

/**
 * Cost of a mass of yarn sold by weight.
 *
 * @formula cost = yarn ÷ priceMass × price
 * @units a mass; money → money
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example yarnCost({ yarn: pounds("2.6"), price: currency("USD")("6.20"), priceMass: pounds(1) }).toString() // "16.12 USD"
 */
export const yarnCost: Calculation<YarnCostInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "yarnCost",
  inputs: {
    yarn: positive(Mass, "used, the waste in it"),
    price: positive(Money, "of so much yarn as it is sold by"),
    priceMass: positive(Mass, "that the price is for"),
  },
  formula: "cost = yarn ÷ priceMass × price",
  result: positive(Money, "for the yarn"),
  resultIn: "price",
  forUse: "up",
  source: brooks1892,
}));
