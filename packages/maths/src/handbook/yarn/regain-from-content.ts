import { added, calculation, loss } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { islamInvoiceMass } from "../../sources/index.js";
import { percentAdded } from "../../units/index.js";
import type { Addition, Loss } from "../../units/index.js";

export interface RegainFromContentInput {
  /** Water, of the mass as it is. */
  readonly content: Loss;
}

/**
 * Regain of a yarn, from its moisture content: the same water as a part of the dry mass instead of the whole.
 *
 * @formula regain = content ÷ (1 − content)
 * @units a percentage lost → a percentage added
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source islam-invoice-mass
 * @example regainFromContent({ content: percentLost(20) }).in(percentAdded) // 25
 */
export const regainFromContent: Calculation<RegainFromContentInput, Addition> = /* @__PURE__ */ calculation(() => ({
  name: "regainFromContent",
  inputs: {
    content: loss("water, of the mass as it is"),
  },
  formula: "regain = content ÷ (1 − content)",
  result: added("water, of the dry mass"),
  resultIn: [percentAdded],
  source: islamInvoiceMass,
}));
