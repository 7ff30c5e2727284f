import { atLeastZero, calculation, noneOrMore, positive, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass, percentOf } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface FibreShareByDryMassInput {
  /** Of this fibre in the finished piece, dry. */
  readonly fibre: Mass;
  /** Of another fibre in the finished piece, dry. */
  readonly others: readonly Mass[];
}

/**
 * Share of a fibre in a piece by dry mass, from the yarn left in the piece; what was cut off as waste does not count. Labelling law decides which mass is meant and how it is rounded.
 *
 * @formula part = fibre ÷ (fibre + Σothers)
 * @units a mass; a list, each a mass → a share in percent
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example fibreShareByDryMass({ fibre: grams(60), others: [grams(90)] }).in(percentOf) // 40
 */
export const fibreShareByDryMass: Calculation<FibreShareByDryMassInput, Share> = /* @__PURE__ */ calculation(() => ({
  name: "fibreShareByDryMass",
  inputs: {
    fibre: positive(Mass, "of this fibre in the finished piece, dry"),
    others: noneOrMore(atLeastZero(Mass, "of another fibre in the finished piece, dry")),
  },
  formula: "part = fibre ÷ (fibre + Σothers)",
  result: share("of the piece, by dry mass"),
  resultIn: [percentOf],
  source: commonPractice,
}));
