import { atLeastZero, calculation, noneOrMore } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface YarnInAllInput {
  /** Of this yarn. */
  readonly warp: Length;
  /** Of this yarn, in one kind of piece. */
  readonly wefts: readonly Length[];
}

/**
 * Length of one yarn in the warp and in all wefts that are woven with it.
 *
 * @formula inAll = warp + Σwefts
 * @units a length; a list, each a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example yarnInAll({ warp: yards(1800), wefts: [yards(700), yards(150)] }).in(yards) // 2650
 */
export const yarnInAll: Calculation<YarnInAllInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnInAll",
  inputs: {
    warp: atLeastZero(Length, "of this yarn"),
    wefts: noneOrMore(atLeastZero(Length, "of this yarn, in one kind of piece")),
  },
  formula: "inAll = warp + Σwefts",
  result: atLeastZero(Length, "of this yarn"),
  source: commonPractice,
}));
