import { calculation, listOf, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, DentsPerLength, dentsPerInch, dentsPerTenCentimetres } from "../../units/index.js";

export interface ReedForSleyInput {
  /** Over the whole order. */
  readonly sett: EndsPerLength;
  /** That follow each other, sleyed alike. */
  readonly dents: readonly number[];
  /** Of those dents; none where they are left empty. */
  readonly endsPerDent: readonly number[];
}

/**
 * Reed in which a sleying order has a wanted mean sett, as a crammed stripe needs it for its harness.
 *
 * @formula
 * ```text
 * ends = Σ(dents × endsPerDent)
 * reed = sett × Σdents ÷ ends
 * ```
 * @units a sett; a list, each dents; a list, each ends in each dent → a reed number
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source taylor-1909
 * @example reedForSley({ sett: endsPerInch(100), dents: [24, 25], endsPerDent: [4, 2] }).in(stockportReed) // 67.123…
 */
export const reedForSley: Calculation<ReedForSleyInput, DentsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "reedForSley",
  inputs: {
    sett: positive(EndsPerLength, "over the whole order"),
    dents: listOf(whole("dents", "that follow each other, sleyed alike", { atLeast: 1 })),
    endsPerDent: listOf(whole("ends in each dent", "of those dents; none where they are left empty", { atLeast: 0 })),
  },
  formula: `
    ends = Σ(dents × endsPerDent)
    reed = sett × Σdents ÷ ends`,
  result: positive(DentsPerLength, "of the reed"),
  resultIn: [dentsPerInch, dentsPerTenCentimetres],
  source: taylor1909,
}));
