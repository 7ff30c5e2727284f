import { calculation, plainNumber, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface KnotClearanceInput {
  /** Free in one dent. */
  readonly space: Length;
  /** Across the thickest old thread, pressed together. */
  readonly oldDiameter: Length;
  /** Across the thickest new thread, pressed together. */
  readonly newDiameter: Length;
}

/**
 * How many diameters of the thicker thread the free space of a dent is wide.
 *
 * @formula
 * ```text
 * diameter  = oldDiameter + orNothing(newDiameter − oldDiameter)
 * clearance = space ÷ diameter
 * ```
 * @units a length → diameters
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example knotClearance({ space: millimetres("1.5"), oldDiameter: millimetres("0.4"), newDiameter: millimetres("0.6") }) // 2.5
 */
export const knotClearance: Calculation<KnotClearanceInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "knotClearance",
  inputs: {
    space: positive(Length, "free in one dent"),
    oldDiameter: positive(Length, "across the thickest old thread, pressed together"),
    newDiameter: positive(Length, "across the thickest new thread, pressed together"),
  },
  formula: `
    diameter  = oldDiameter + orNothing(newDiameter − oldDiameter)
    clearance = space ÷ diameter`,
  result: plainNumber("diameters", "of the thicker thread, in the free space"),
  source: commonPractice,
}));
