import { calculation, listOf, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";

export interface EndsInSleyInput {
  /** That follow each other, sleyed alike. */
  readonly dents: readonly number[];
  /** Of those dents; none where they are left empty. */
  readonly endsPerDent: readonly number[];
}

/**
 * Ends that a sleying takes: so many dents of so many ends each, one after the other, empty dents among them.
 * For heddles instead of ends count a doubled end once.
 *
 * @formula ends = Σ(dents × endsPerDent)
 * @units a list, each dents; a list, each ends in each dent → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source wolfensberger-1921
 * @example endsInSley({ dents: [9, 1584, 9], endsPerDent: [4, 2, 4] }) // 3240
 */
export const endsInSley: Calculation<EndsInSleyInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsInSley",
  inputs: {
    dents: listOf(whole("dents", "that follow each other, sleyed alike", { atLeast: 1 })),
    endsPerDent: listOf(whole("ends in each dent", "of those dents; none where they are left empty", { atLeast: 0 })),
  },
  formula: "ends = Σ(dents × endsPerDent)",
  result: whole("ends", "in the reed", { atLeast: 1 }),
  source: wolfensberger1921,
}));
