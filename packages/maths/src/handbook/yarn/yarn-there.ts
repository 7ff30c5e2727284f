import { atLeastZero, calculation, listOf } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";

export interface YarnThereInput {
  /** Of this yarn, one part of what is there. */
  readonly onHand: readonly Mass[];
}

/**
 * Mass of a yarn that is there, its parts put together.
 *
 * @formula there = ΣonHand
 * @units a list, each a mass → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example yarnThere({ onHand: [ounces(16), ounces(3)] }).in(pounds) // 1.1875
 */
export const yarnThere: Calculation<YarnThereInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "yarnThere",
  inputs: {
    onHand: listOf(atLeastZero(Mass, "of this yarn, one part of what is there")),
  },
  formula: "there = ΣonHand",
  result: atLeastZero(Mass, "that is there"),
  source: commonPractice,
}));
