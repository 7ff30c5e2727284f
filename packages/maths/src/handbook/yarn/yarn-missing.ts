import { atLeastZero, calculation } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";

export interface YarnMissingInput {
  /** Of this yarn. */
  readonly onHand: Mass;
  /** Of this yarn. */
  readonly needed: Mass;
}

/**
 * How much of a yarn is missing; nothing where enough is there.
 *
 * @formula missing = orNothing(needed − onHand)
 * @units a mass → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example yarnMissing({ onHand: ounces(8), needed: ounces("21.5") }).in(ounces) // 13.5
 */
export const yarnMissing: Calculation<YarnMissingInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "yarnMissing",
  inputs: {
    onHand: atLeastZero(Mass, "of this yarn"),
    needed: atLeastZero(Mass, "of this yarn"),
  },
  formula: "missing = orNothing(needed − onHand)",
  result: atLeastZero(Mass, "that is missing"),
  source: commonPractice,
}));
