import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { DirectCount } from "../../units/index.js";

export interface FoldedCountDirectInput {
  /** Each thread in the fold. */
  readonly counts: readonly DirectCount[];
}

/**
 * Direct count of a thread folded from threads of unlike counts, in the system of the first; no twist contraction.
 *
 * @formula folded = Σcounts
 * @units a list, each a direct count → a direct count
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source wolfensberger-1921
 * @example foldedCountDirect({ counts: [dramSilk("1.8"), dramSilk("2.7")] }).in(dramSilk) // 4.5
 */
export const foldedCountDirect: Calculation<FoldedCountDirectInput, DirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "foldedCountDirect",
  inputs: {
    counts: listOf(positive(DirectCount, "each thread in the fold")),
  },
  formula: "folded = Σcounts",
  result: positive(DirectCount, "of the folded thread"),
  resultIn: "counts",
  source: wolfensberger1921,
  slips: [{ says: "folds direct counts as if they were indirect", instead: "folded = 1 ÷ Σ(1 ÷ counts)" }],
}));
