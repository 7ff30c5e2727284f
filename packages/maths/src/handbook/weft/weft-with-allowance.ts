import { added, atLeastZero, calculation } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WeftWithAllowanceInput {
  /** Laid straight, its tails too. */
  readonly weft: Length;
  /** Of the weft laid straight. */
  readonly allowance: Addition;
}

/**
 * Weft with what is allowed for joins, bobbin ends and the slope of the picks.
 *
 * @formula withAllowance = weft × (1 + allowance)
 * @units a length; a percentage added → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example weftWithAllowance({ weft: yards(200), allowance: percentAdded(5) }).in(yards) // 210
 */
export const weftWithAllowance: Calculation<WeftWithAllowanceInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "weftWithAllowance",
  inputs: {
    weft: atLeastZero(Length, "laid straight, its tails too"),
    allowance: added("of the weft laid straight"),
  },
  formula: "withAllowance = weft × (1 + allowance)",
  result: atLeastZero(Length, "of weft to have"),
  source: commonPractice,
}));
