import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";

export interface PackagesToBuyInput {
  /** Of this yarn. */
  readonly needed: Mass;
  /** Of yarn on one package, the tube not counted. */
  readonly packageMass: Mass;
}

/**
 * Whole packages to buy for a mass of yarn.
 *
 * @formula packages = roundUp(needed ÷ packageMass)
 * @units a mass → packages
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example packagesToBuy({ needed: ounces(17), packageMass: ounces(8) }) // 3
 */
export const packagesToBuy: Calculation<PackagesToBuyInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "packagesToBuy",
  inputs: {
    needed: atLeastZero(Mass, "of this yarn"),
    packageMass: positive(Mass, "of yarn on one package, the tube not counted"),
  },
  formula: "packages = roundUp(needed ÷ packageMass)",
  result: whole("packages", "to buy", { atLeast: 0 }),
  source: commonPractice,
}));
