import { calculation, listOf, partsToo, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";

export interface MassOfPackagesInput {
  /** Of one size, part ones counted as parts. */
  readonly number: readonly number[];
  /** Of yarn on a full one of that size, the tube not counted. */
  readonly packageMass: readonly Mass[];
}

/**
 * Mass of yarn on packages of several sizes, part ones too.
 *
 * @formula mass = Σ(number × packageMass)
 * @units a list, each packages; a list, each a mass → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example massOfPackages({ number: [1.5, 2], packageMass: [pounds(1), ounces(2)] }).in(ounces) // 28
 */
export const massOfPackages: Calculation<MassOfPackagesInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "massOfPackages",
  inputs: {
    number: listOf(partsToo("packages", "of one size, part ones counted as parts")),
    packageMass: listOf(positive(Mass, "of yarn on a full one of that size, the tube not counted")),
  },
  formula: "mass = Σ(number × packageMass)",
  result: positive(Mass, "of yarn on them"),
  source: commonPractice,
}));
