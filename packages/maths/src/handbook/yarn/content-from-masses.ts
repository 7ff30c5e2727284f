import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { islamInvoiceMass } from "../../sources/index.js";
import { Mass, percentLost } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface ContentFromMassesInput {
  /** As it is. */
  readonly mass: Mass;
  /** Of the same yarn, dried until it grows no lighter. */
  readonly dryMass: Mass;
}

/**
 * Moisture content of a yarn from two weighings, as it is and dried: the water as a part of the whole mass.
 *
 * @formula content = (mass − dryMass) ÷ mass
 * @units a mass → a percentage lost
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source islam-invoice-mass
 * @example contentFromMasses({ mass: grams(125), dryMass: grams(100) }).in(percentLost) // 20
 */
export const contentFromMasses: Calculation<ContentFromMassesInput, Loss> = /* @__PURE__ */ calculation(() => ({
  name: "contentFromMasses",
  inputs: {
    mass: positive(Mass, "as it is"),
    dryMass: positive(Mass, "of the same yarn, dried until it grows no lighter"),
  },
  formula: "content = (mass − dryMass) ÷ mass",
  result: loss("water, of the mass as it is"),
  resultIn: [percentLost],
  source: islamInvoiceMass,
}));
