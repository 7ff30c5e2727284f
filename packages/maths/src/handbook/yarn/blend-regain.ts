import { added, calculation, listOf, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { islamInvoiceMass } from "../../sources/index.js";
import { percentAdded } from "../../units/index.js";
import type { Addition, Share } from "../../units/index.js";

export interface BlendRegainInput {
  /** Each fibre, of the dry mass of all. */
  readonly shares: readonly Share[];
  /** Water, of the dry mass of each fibre, in the same order. */
  readonly regains: readonly Addition[];
}

/**
 * Regain of a blend, from the shares of its fibres by dry mass.
 *
 * @formula regain = Σ(shares × regains) ÷ Σshares
 * @units a list, each a share in percent; a list, each a percentage added → a percentage added
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source islam-invoice-mass
 * @example blendRegain({ shares: [percentOf(80), percentOf(20)], regains: [percentAdded("0.4"), percentAdded("8.5")] }).in(percentAdded) // 2.02
 */
export const blendRegain: Calculation<BlendRegainInput, Addition> = /* @__PURE__ */ calculation(() => ({
  name: "blendRegain",
  inputs: {
    shares: listOf(share("each fibre, of the dry mass of all")),
    regains: listOf(added("water, of the dry mass of each fibre, in the same order")),
  },
  formula: "regain = Σ(shares × regains) ÷ Σshares",
  result: added("water, of the dry mass of the blend"),
  resultIn: [percentAdded],
  source: islamInvoiceMass,
}));
