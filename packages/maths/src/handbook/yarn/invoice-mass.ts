import { added, calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { islamInvoiceMass } from "../../sources/index.js";
import { Mass } from "../../units/index.js";
import type { Addition, Loss } from "../../units/index.js";

export interface InvoiceMassInput {
  /** As it is. */
  readonly mass: Mass;
  /** Water, of the mass as it is. */
  readonly content: Loss;
  /** Water agreed on, of the dry mass. */
  readonly regain: Addition;
}

/**
 * Mass to charge for a lot of yarn: its dry mass with the agreed regain.
 *
 * @formula
 * ```text
 * dry     = mass × (1 − content)
 * invoice = dry × (1 + regain)
 * ```
 * @units a mass; a percentage lost; a percentage added → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source islam-invoice-mass
 * @example invoiceMass({ mass: kilograms(20000), content: percentLost(4), regain: percentAdded("2.02") }).in(kilograms) // 19587.84
 */
export const invoiceMass: Calculation<InvoiceMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "invoiceMass",
  inputs: {
    mass: positive(Mass, "as it is"),
    content: loss("water, of the mass as it is"),
    regain: added("water agreed on, of the dry mass"),
  },
  formula: `
    dry     = mass × (1 − content)
    invoice = dry × (1 + regain)`,
  result: positive(Mass, "to charge for"),
  source: islamInvoiceMass,
  slips: [{ says: "divides the content out as if it were a regain", instead: "dry = mass ÷ (1 + content)" }],
}));
