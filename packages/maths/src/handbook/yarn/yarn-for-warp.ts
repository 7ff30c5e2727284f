import { atLeastZero, calculation, noneOrMore } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface YarnForWarpInput {
  /** There, of this yarn. */
  readonly yarn: Length;
  /** Of this yarn, in one kind of piece. */
  readonly wefts: readonly Length[];
}

/**
 * What is left of a yarn for the ends of the warp once its wefts are set aside.
 *
 * @formula forWarp = yarn − Σwefts
 * @units a length; a list, each a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example yarnForWarp({ yarn: yards(840), wefts: [yards(90)] }).in(yards) // 750
 */
export const yarnForWarp: Calculation<YarnForWarpInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnForWarp",
  inputs: {
    yarn: atLeastZero(Length, "there, of this yarn"),
    wefts: noneOrMore(atLeastZero(Length, "of this yarn, in one kind of piece")),
  },
  formula: "forWarp = yarn − Σwefts",
  result: atLeastZero(Length, "for the warp"),
  source: commonPractice,
}));
