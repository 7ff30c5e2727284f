import { calculation, positive, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { IndirectCount, Length, cottonCount, inches, millimetres } from "../../units/index.js";

export interface DiameterByPeirceInput {
  /** Of the finished thread. */
  readonly count: IndirectCount;
}

/**
 * Diameter of a thread by the rule of Peirce for cotton, which reckons in cotton counts and inches; told in millimetres.
 *
 * @formula diameter = 1 ÷ (28 × √count)
 * @units an indirect count, reckoned in cotton count → a length, reckoned in inches
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example diameterByPeirce({ count: cottonCount(4) }).in(millimetres) // 0.45357…
 */
export const diameterByPeirce: Calculation<DiameterByPeirceInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "diameterByPeirce",
  inputs: {
    count: reckonedIn(positive(IndirectCount, "of the finished thread"), [cottonCount]),
  },
  formula: "diameter = 1 ÷ (28 × √count)",
  result: reckonedIn(positive(Length, "across the thread, taken as round"), [inches]),
  resultIn: [millimetres],
  source: gateTextile,
}));
