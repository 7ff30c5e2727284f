import { atLeastZero, calculation, listOf, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Money } from "../../units/index.js";

export interface CostOfPackagesInput {
  /** Of one size. */
  readonly number: readonly number[];
  /** Of one of that size. */
  readonly price: readonly Money[];
}

/**
 * What packages of several sizes cost together.
 *
 * @formula cost = Σ(number × price)
 * @units a list, each packages; a list, each money → money
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example costOfPackages({ number: [2, 1], price: [currency("EUR")(15), currency("EUR")("8.50")] }).toString() // "38.5 EUR"
 */
export const costOfPackages: Calculation<CostOfPackagesInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "costOfPackages",
  inputs: {
    number: listOf(whole("packages", "of one size", { atLeast: 0 })),
    price: listOf(positive(Money, "of one of that size")),
  },
  formula: "cost = Σ(number × price)",
  result: atLeastZero(Money, "of them all"),
  resultIn: "price",
  forUse: "up",
  source: commonPractice,
}));
