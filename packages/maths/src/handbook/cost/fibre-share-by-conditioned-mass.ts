import { added, atLeastZero, calculation, noneOrMore, positive, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass, percentOf } from "../../units/index.js";
import type { Addition, Share } from "../../units/index.js";

export interface FibreShareByConditionedMassInput {
  /** Of this fibre in the finished piece, dry. */
  readonly fibre: Mass;
  /** Of the dry mass of this fibre, as agreed. */
  readonly regain: Addition;
  /** Of another fibre in the finished piece, dry. */
  readonly others: readonly Mass[];
  /** Of the dry mass of that fibre, as agreed. */
  readonly otherRegains: readonly Addition[];
}

/**
 * Share of a fibre in a piece by conditioned mass: every dry mass with its agreed regain added. Labelling law decides which mass is meant, which regains are agreed, and how it is rounded.
 *
 * @formula
 * ```text
 * conditioned = fibre × (1 + regain)
 * part        = conditioned ÷ (conditioned + Σ(others × (1 + otherRegains)))
 * ```
 * @units a mass; a percentage added; a list, each a mass; a list, each a percentage added → a share in percent
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example fibreShareByConditionedMass({ fibre: grams(100), regain: percentAdded(16), others: [grams(100)], otherRegains: [percentAdded("8.5")] }).in(percentOf) // 51.67037…
 */
export const fibreShareByConditionedMass: Calculation<FibreShareByConditionedMassInput, Share> =
  /* @__PURE__ */ calculation(() => ({
    name: "fibreShareByConditionedMass",
    inputs: {
      fibre: positive(Mass, "of this fibre in the finished piece, dry"),
      regain: added("of the dry mass of this fibre, as agreed"),
      others: noneOrMore(atLeastZero(Mass, "of another fibre in the finished piece, dry")),
      otherRegains: noneOrMore(added("of the dry mass of that fibre, as agreed")),
    },
    formula: `
    conditioned = fibre × (1 + regain)
    part        = conditioned ÷ (conditioned + Σ(others × (1 + otherRegains)))`,
    result: share("of the piece, by conditioned mass"),
    resultIn: [percentOf],
    source: commonPractice,
  }));
