import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Mass } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface DryMassInput {
  /** As it is. */
  readonly mass: Mass;
  /** Water, of the dry mass. */
  readonly regain: Addition;
}

/**
 * Mass of a fibre without its water, the regain divided out.
 *
 * @formula dry = mass ÷ (1 + regain)
 * @units a mass; a percentage added → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example dryMass({ mass: grams(114), regain: percentAdded(14) }).in(grams) // 100
 */
export const dryMass: Calculation<DryMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "dryMass",
  inputs: {
    mass: positive(Mass, "as it is"),
    regain: added("water, of the dry mass"),
  },
  formula: "dry = mass ÷ (1 + regain)",
  result: positive(Mass, "of the fibre alone"),
  source: gateTextile,
}));
