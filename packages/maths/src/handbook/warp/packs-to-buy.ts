import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";

export interface PacksToBuyInput {
  /** Needed of this yarn. */
  readonly packages: number;
  /** As they are sold. */
  readonly packagesPerPack: number;
}

/**
 * Whole packs to buy where packages are sold so many together: cones to a bag, skeins to a bundle.
 *
 * @formula packs = roundUp(packages ÷ packagesPerPack)
 * @units packages; packages to a pack → packs
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example packsToBuy({ packages: 13, packagesPerPack: 6 }) // 3
 */
export const packsToBuy: Calculation<PacksToBuyInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "packsToBuy",
  inputs: {
    packages: whole("packages", "needed of this yarn", { atLeast: 0 }),
    packagesPerPack: whole("packages to a pack", "as they are sold", { atLeast: 1 }),
  },
  formula: "packs = roundUp(packages ÷ packagesPerPack)",
  result: whole("packs", "to buy", { atLeast: 0 }),
  source: commonPractice,
}));
