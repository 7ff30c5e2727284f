import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { durhamWeaver } from "../../sources/index.js";
import { Length, PicksPerLength } from "../../units/index.js";

export interface LengthOfPicksInput {
  /** Woven. */
  readonly picksInAll: number;
  /** To the length, counted at the loom or on the cloth. */
  readonly picks: PicksPerLength;
}

/**
 * Length that so many picks weave.
 *
 * @formula length = picksInAll ÷ picks
 * @units picks; a number of picks → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source durham-weaver
 * @example lengthOfPicks({ picksInAll: 634, picks: picksPerInch(20) }).in(inches) // 31.7
 */
export const lengthOfPicks: Calculation<LengthOfPicksInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "lengthOfPicks",
  inputs: {
    picksInAll: whole("picks", "woven", { atLeast: 1 }),
    picks: positive(PicksPerLength, "to the length, counted at the loom or on the cloth"),
  },
  formula: "length = picksInAll ÷ picks",
  result: positive(Length, "counted where the picks were"),
  source: durhamWeaver,
}));
