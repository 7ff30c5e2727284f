import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";

export interface FoldedCountInput {
  /** Each thread in the fold. */
  readonly counts: readonly IndirectCount[];
}

/**
 * Count of a thread folded from threads of unlike counts, in the system of the first; no twist contraction.
 *
 * @formula folded = 1 ÷ Σ(1 ÷ counts)
 * @units a list, each an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source taylor-1909
 * @example foldedCount({ counts: [cottonCount(60), cottonCount(40)] }).in(cottonCount) // 24
 */
export const foldedCount: Calculation<FoldedCountInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "foldedCount",
  inputs: { counts: listOf(positive(IndirectCount, "each thread in the fold")) },
  formula: "folded = 1 ÷ Σ(1 ÷ counts)",
  result: positive(IndirectCount, "of the folded thread"),
  resultIn: "counts",
  source: taylor1909,
  slips: [
    { says: "takes the average of the counts", instead: "folded = Σcounts ÷ Σ(counts ÷ counts)" },
    { says: "adds the counts", instead: "folded = Σcounts" },
  ],
}));
