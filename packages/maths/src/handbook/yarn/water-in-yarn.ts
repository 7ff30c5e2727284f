import { added, atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Mass } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WaterInYarnInput {
  /** As it is. */
  readonly mass: Mass;
  /** Water, of the dry mass. */
  readonly regain: Addition;
}

/**
 * Mass of the water in a yarn or cloth, from its regain.
 *
 * @formula water = mass × regain ÷ (1 + regain)
 * @units a mass; a percentage added → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example waterInYarn({ mass: grams(114), regain: percentAdded(14) }).in(grams) // 14
 */
export const waterInYarn: Calculation<WaterInYarnInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "waterInYarn",
  inputs: {
    mass: positive(Mass, "as it is"),
    regain: added("water, of the dry mass"),
  },
  formula: "water = mass × regain ÷ (1 + regain)",
  result: atLeastZero(Mass, "of the water alone"),
  source: gateTextile,
}));
