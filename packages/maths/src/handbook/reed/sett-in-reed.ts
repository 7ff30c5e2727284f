import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { DentsPerLength, EndsPerLength, endsPerCentimetre, endsPerInch } from "../../units/index.js";

export interface SettInReedInput {
  /** Of the reed. */
  readonly reed: DentsPerLength;
  /** The same in every dent. */
  readonly endsPerDent: number;
}

/**
 * Sett in the reed, the same number of ends in every dent.
 *
 * @formula sett = reed × endsPerDent
 * @units a reed number; ends in each dent → a sett
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example settInReed({ reed: dentsPerInch(10), endsPerDent: 2 }).in(endsPerInch) // 20
 */
export const settInReed: Calculation<SettInReedInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settInReed",
  inputs: {
    reed: positive(DentsPerLength, "of the reed"),
    endsPerDent: whole("ends in each dent", "the same in every dent", { atLeast: 1 }),
  },
  formula: "sett = reed × endsPerDent",
  result: positive(EndsPerLength, "in the reed"),
  resultIn: [endsPerInch, endsPerCentimetre],
  source: taylor1909,
}));
