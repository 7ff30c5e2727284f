import { atLeastZero, calculation, listOf, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";

export interface YarnSpareOfSizesInput {
  /** Of this yarn, before buying. */
  readonly onHand: Mass;
  /** Bought of one size. */
  readonly packages: readonly number[];
  /** Of yarn on one of that size, the tube not counted. */
  readonly packageMass: readonly Mass[];
  /** Of this yarn. */
  readonly needed: Mass;
}

/**
 * What is over of a yarn when packages of several sizes are added to what is on hand.
 *
 * @formula
 * ```text
 * bought = Σ(packages × packageMass)
 * spare = bought + onHand − needed
 * ```
 * @units a mass; a list, each packages; a list, each a mass → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example
 * const bought = { packages: [1, 1], packageMass: [pounds(1), ounces(8)] };
 * yarnSpareOfSizes({ onHand: ounces(3), ...bought, needed: ounces("25.5") }).in(ounces) // 1.5
 */
export const yarnSpareOfSizes: Calculation<YarnSpareOfSizesInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "yarnSpareOfSizes",
  inputs: {
    onHand: atLeastZero(Mass, "of this yarn, before buying"),
    packages: listOf(whole("packages", "bought of one size", { atLeast: 0 })),
    packageMass: listOf(positive(Mass, "of yarn on one of that size, the tube not counted")),
    needed: atLeastZero(Mass, "of this yarn"),
  },
  formula: `
    bought = Σ(packages × packageMass)
    spare = bought + onHand − needed`,
  result: atLeastZero(Mass, "over in the end"),
  source: commonPractice,
}));
