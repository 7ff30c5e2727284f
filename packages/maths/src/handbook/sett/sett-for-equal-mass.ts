import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { silkWool2016 } from "../../sources/index.js";
import { EndsPerLength, IndirectCount } from "../../units/index.js";

export interface SettForEqualMassInput {
  /** Of the cloth there is. */
  readonly sett: EndsPerLength;
  /** Of the yarn in it. */
  readonly count: IndirectCount;
  /** Of the other yarn. */
  readonly newCount: IndirectCount;
}

/**
 * Sett at which another yarn weighs as much in the warp; not the sett for a cloth as firm, which goes by the square root.
 *
 * @formula newSett = sett × newCount ÷ count
 * @units a sett; an indirect count → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source silk-wool-2016
 * @example settForEqualMass({ sett: endsPerInch(36), count: yardsPerPound(4200), newCount: yardsPerPound(2800) }).in(endsPerInch) // 24
 */
export const settForEqualMass: Calculation<SettForEqualMassInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settForEqualMass",
  inputs: {
    sett: positive(EndsPerLength, "of the cloth there is"),
    count: positive(IndirectCount, "of the yarn in it"),
    newCount: positive(IndirectCount, "of the other yarn"),
  },
  formula: "newSett = sett × newCount ÷ count",
  result: positive(EndsPerLength, "of the other yarn"),
  resultIn: "sett",
  source: silkWool2016,
}));
