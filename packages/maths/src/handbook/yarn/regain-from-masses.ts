import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Mass, percentAdded } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface RegainFromMassesInput {
  /** As it is. */
  readonly mass: Mass;
  /** Of the same yarn, dried until it grows no lighter. */
  readonly dryMass: Mass;
}

/**
 * Regain of a yarn from two weighings, as it is and dried: the water as a part of the dry mass.
 *
 * @formula regain = (mass − dryMass) ÷ dryMass
 * @units a mass → a percentage added
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example regainFromMasses({ mass: grams(114), dryMass: grams(100) }).in(percentAdded) // 14
 */
export const regainFromMasses: Calculation<RegainFromMassesInput, Addition> = /* @__PURE__ */ calculation(() => ({
  name: "regainFromMasses",
  inputs: {
    mass: positive(Mass, "as it is"),
    dryMass: positive(Mass, "of the same yarn, dried until it grows no lighter"),
  },
  formula: "regain = (mass − dryMass) ÷ dryMass",
  result: added("water, of the dry mass"),
  resultIn: [percentAdded],
  source: gateTextile,
}));
