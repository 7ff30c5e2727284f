import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, IndirectCount } from "../../units/index.js";

export interface SettForCountInput {
  /** Of the cloth there is. */
  readonly sett: EndsPerLength;
  /** Of the yarn in it. */
  readonly count: IndirectCount;
  /** Of the other yarn. */
  readonly newCount: IndirectCount;
}

/**
 * Sett of the same cloth in another yarn, just as firm: as the square root of the count.
 *
 * @formula newSett = sett × √(newCount ÷ count)
 * @units a sett; an indirect count → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example settForCount({ sett: endsPerInch(60), count: cottonCount(16), newCount: cottonCount(25) }).in(endsPerInch) // 75
 */
export const settForCount: Calculation<SettForCountInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settForCount",
  inputs: {
    sett: positive(EndsPerLength, "of the cloth there is"),
    count: positive(IndirectCount, "of the yarn in it"),
    newCount: positive(IndirectCount, "of the other yarn"),
  },
  formula: "newSett = sett × √(newCount ÷ count)",
  result: positive(EndsPerLength, "of the new cloth"),
  resultIn: "sett",
  source: taylor1909,
  slips: [
    { says: "takes the setts as the counts, not as their square roots", instead: "newSett = sett × newCount ÷ count" },
  ],
}));
