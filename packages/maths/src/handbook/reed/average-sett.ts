import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { EndsPerLength, Length, endsPerCentimetre, endsPerInch } from "../../units/index.js";

export interface AverageSettInput {
  /** In that width. */
  readonly ends: number;
  /** From the first dent to the last. */
  readonly widthInReed: Length;
}

/**
 * Ends to a length in the mean, where they do not stand alike in all dents.
 *
 * @formula sett = ends ÷ widthInReed
 * @units ends; a length → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example averageSett({ ends: 304, widthInReed: inches(10) }).in(endsPerInch) // 30.4
 */
export const averageSett: Calculation<AverageSettInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "averageSett",
  inputs: {
    ends: whole("ends", "in that width", { atLeast: 1 }),
    widthInReed: positive(Length, "from the first dent to the last"),
  },
  formula: "sett = ends ÷ widthInReed",
  result: positive(EndsPerLength, "in the mean"),
  resultIn: [endsPerInch, endsPerCentimetre],
  source: commonPractice,
}));
