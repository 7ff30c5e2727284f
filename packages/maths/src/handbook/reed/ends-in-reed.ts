import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Length, DentsPerLength } from "../../units/index.js";

export interface EndsInReedInput {
  /** Of the reed. */
  readonly reed: DentsPerLength;
  /** That the ends must fill. */
  readonly widthInReed: Length;
  /** The same in every dent. */
  readonly endsPerDent: number;
}

/**
 * Ends for a width in the reed, the same number in every dent, the dents made whole first.
 *
 * @formula
 * ```text
 * dents = roundUp(reed × widthInReed)
 * ends  = dents × endsPerDent
 * ```
 * @units a reed number; a length; ends in each dent → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source brooks-1892
 * @example endsInReed({ reed: scotchReed(1100), widthInReed: inches(38), endsPerDent: 2 }) // 2260
 */
export const endsInReed: Calculation<EndsInReedInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsInReed",
  inputs: {
    reed: positive(DentsPerLength, "of the reed"),
    widthInReed: positive(Length, "that the ends must fill"),
    endsPerDent: whole("ends in each dent", "the same in every dent", { atLeast: 1 }),
  },
  formula: `
    dents = roundUp(reed × widthInReed)
    ends  = dents × endsPerDent`,
  result: whole("ends", "in full dents", { atLeast: 1 }),
  source: brooks1892,
  slips: [
    {
      says: "rounds the ends instead of the dents, so that a dent stays part filled",
      instead: "ends = roundUp(reed × widthInReed × endsPerDent)",
    },
  ],
}));
