import { added, calculation, listOf, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { percentAdded } from "../../units/index.js";
import type { Addition, Share } from "../../units/index.js";

export interface BlendRegainByConditionedMassInput {
  /** Each fibre, of the mass of all at its regain. */
  readonly shares: readonly Share[];
  /** Water, of the dry mass of each fibre, in the same order. */
  readonly regains: readonly Addition[];
}

/**
 * Regain of a blend, from the shares of its fibres by conditioned mass: each weighed with the water it holds.
 *
 * Where the shares are of the dry mass, `blendRegain` is the formula.
 *
 * @formula
 * ```text
 * dry    = Σ(shares ÷ (1 + regains))
 * water  = Σ(shares × regains ÷ (1 + regains))
 * regain = water ÷ dry
 * ```
 * @units a list, each a share in percent; a list, each a percentage added → a percentage added
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source gate-textile
 * @example blendRegainByConditionedMass({ shares: [percentOf(50), percentOf(50)], regains: [percentAdded(25), percentAdded(0)] }).in(percentAdded) // 11.11…
 */
export const blendRegainByConditionedMass: Calculation<BlendRegainByConditionedMassInput, Addition> =
  /* @__PURE__ */ calculation(() => ({
    name: "blendRegainByConditionedMass",
    inputs: {
      shares: listOf(share("each fibre, of the mass of all at its regain")),
      regains: listOf(added("water, of the dry mass of each fibre, in the same order")),
    },
    formula: `
    dry    = Σ(shares ÷ (1 + regains))
    water  = Σ(shares × regains ÷ (1 + regains))
    regain = water ÷ dry`,
    result: added("water, of the dry mass of the blend"),
    resultIn: [percentAdded],
    source: gateTextile,
    slips: [
      {
        says: "takes shares by conditioned mass for shares by dry mass",
        instead: "regain = Σ(shares × regains) ÷ Σshares",
      },
    ],
  }));
