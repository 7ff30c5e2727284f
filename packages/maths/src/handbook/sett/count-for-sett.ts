import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, IndirectCount } from "../../units/index.js";

export interface CountForSettInput {
  /** Of the yarn in the cloth there is. */
  readonly count: IndirectCount;
  /** Of that cloth. */
  readonly sett: EndsPerLength;
  /** Of the new cloth. */
  readonly newSett: EndsPerLength;
}

/**
 * Count of the yarn for the same cloth at another sett, just as firm: as the square of the sett.
 *
 * @formula
 * ```text
 * times = newSett ÷ sett
 * newCount = count × times × times
 * ```
 * @units an indirect count; a sett → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example countForSett({ count: cottonCount(16), sett: endsPerInch(60), newSett: endsPerInch(75) }).in(cottonCount) // 25
 */
export const countForSett: Calculation<CountForSettInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "countForSett",
  inputs: {
    count: positive(IndirectCount, "of the yarn in the cloth there is"),
    sett: positive(EndsPerLength, "of that cloth"),
    newSett: positive(EndsPerLength, "of the new cloth"),
  },
  formula: `
    times = newSett ÷ sett
    newCount = count × times × times`,
  result: positive(IndirectCount, "of the new yarn"),
  resultIn: "count",
  source: taylor1909,
}));
