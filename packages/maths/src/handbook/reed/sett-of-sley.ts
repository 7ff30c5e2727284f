import { calculation, listOf, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, DentsPerLength, endsPerInch, endsPerCentimetre } from "../../units/index.js";

export interface SettOfSleyInput {
  /** Of the reed. */
  readonly reed: DentsPerLength;
  /** That follow each other, sleyed alike. */
  readonly dents: readonly number[];
  /** Of those dents; none where they are left empty. */
  readonly endsPerDent: readonly number[];
}

/**
 * Mean sett of a sleying order, its empty and crammed dents counted in.
 *
 * @formula
 * ```text
 * ends = Σ(dents × endsPerDent)
 * sett = reed × ends ÷ Σdents
 * ```
 * @units a reed number; a list, each dents; a list, each ends in each dent → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source taylor-1909
 * @example settOfSley({ reed: dentsPerInch(10), dents: [1, 2], endsPerDent: [1, 2] }).in(endsPerInch) // 16.666…
 */
export const settOfSley: Calculation<SettOfSleyInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settOfSley",
  inputs: {
    reed: positive(DentsPerLength, "of the reed"),
    dents: listOf(whole("dents", "that follow each other, sleyed alike", { atLeast: 1 })),
    endsPerDent: listOf(whole("ends in each dent", "of those dents; none where they are left empty", { atLeast: 0 })),
  },
  formula: `
    ends = Σ(dents × endsPerDent)
    sett = reed × ends ÷ Σdents`,
  result: positive(EndsPerLength, "over the whole order"),
  resultIn: [endsPerInch, endsPerCentimetre],
  source: taylor1909,
  slips: [
    { says: "divides by the number of the reed, dents per inch over ends", instead: "sett = reed × Σdents ÷ ends" },
  ],
}));
