import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";

export interface AverageCountInput {
  /** Each thread, all of one length. */
  readonly counts: readonly IndirectCount[];
}

/**
 * Average count of threads lying side by side, each of the same length; not the count they fold to.
 *
 * @formula average = Σ(counts ÷ counts) ÷ Σ(1 ÷ counts)
 * @units a list, each an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source davis-1920
 * @example averageCount({ counts: [cottonCount(80), cottonCount(40), cottonCount(20)] }).in(cottonCount) // 34.285…
 */
export const averageCount: Calculation<AverageCountInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "averageCount",
  inputs: {
    counts: listOf(positive(IndirectCount, "each thread, all of one length")),
  },
  formula: "average = Σ(counts ÷ counts) ÷ Σ(1 ÷ counts)",
  result: positive(IndirectCount, "of them all"),
  resultIn: "counts",
  source: davis1920,
  slips: [
    { says: "takes the plain mean of the counts", instead: "average = Σcounts ÷ Σ(counts ÷ counts)" },
    { says: "takes the count they fold to for their average", instead: "average = 1 ÷ Σ(1 ÷ counts)" },
  ],
}));
