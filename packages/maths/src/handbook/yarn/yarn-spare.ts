import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";

export interface YarnSpareInput {
  /** Of this yarn, before buying. */
  readonly onHand: Mass;
  /** Bought. */
  readonly packages: number;
  /** Of yarn on one package, the tube not counted. */
  readonly packageMass: Mass;
  /** Of this yarn. */
  readonly needed: Mass;
}

/**
 * What is over of a yarn when the packages bought are added to what is on hand.
 *
 * @formula
 * ```text
 * bought = packages × packageMass
 * spare = bought + onHand − needed
 * ```
 * @units a mass; packages → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example yarnSpare({ onHand: ounces(3), packages: 2, packageMass: ounces(8), needed: ounces("17.5") }).in(ounces) // 1.5
 */
export const yarnSpare: Calculation<YarnSpareInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "yarnSpare",
  inputs: {
    onHand: atLeastZero(Mass, "of this yarn, before buying"),
    packages: whole("packages", "bought", { atLeast: 0 }),
    packageMass: positive(Mass, "of yarn on one package, the tube not counted"),
    needed: atLeastZero(Mass, "of this yarn"),
  },
  formula: `
    bought = packages × packageMass
    spare = bought + onHand − needed`,
  result: atLeastZero(Mass, "over in the end"),
  source: commonPractice,
}));
