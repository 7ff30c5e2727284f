import { added, atLeastZero, calculation } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface YarnWithAllowanceInput {
  /** In the picks or the ends, laid straight, their tails too. */
  readonly yarn: Length;
  /** Of that length. */
  readonly allowance: Addition;
}

/**
 * Yarn with what is allowed: in the weft for joins, bobbin ends and the slope of the picks, in the warp for knots and
 * breaks in winding.
 *
 * @formula withAllowance = yarn × (1 + allowance)
 * @units a length; a percentage added → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example yarnWithAllowance({ yarn: yards(200), allowance: percentAdded(5) }).in(yards) // 210
 */
export const yarnWithAllowance: Calculation<YarnWithAllowanceInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnWithAllowance",
  inputs: {
    yarn: atLeastZero(Length, "in the picks or the ends, laid straight, their tails too"),
    allowance: added("of that length"),
  },
  formula: "withAllowance = yarn × (1 + allowance)",
  result: atLeastZero(Length, "of yarn to have"),
  source: commonPractice,
}));
