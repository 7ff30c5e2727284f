import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, Length } from "../../units/index.js";

export interface ReedWidthInput {
  /** In the reed. */
  readonly ends: number;
  /** In the reed. */
  readonly sett: EndsPerLength;
}

/**
 * Width the ends take in the reed.
 *
 * @formula width = ends ÷ sett
 * @units ends; a sett → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example reedWidth({ ends: 420, sett: endsPerInch(20) }).in(inches) // 21
 */
export const reedWidth: Calculation<ReedWidthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "reedWidth",
  inputs: {
    ends: whole("ends", "in the reed", { atLeast: 1 }),
    sett: positive(EndsPerLength, "in the reed"),
  },
  formula: "width = ends ÷ sett",
  result: positive(Length, "in the reed"),
  forUse: "up",
  source: taylor1909,
}));
