import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount, Length } from "../../units/index.js";

export interface FoldedCountFromLengthsInput {
  /** Of the folded thread. */
  readonly foldedLength: Length;
  /** Each thread takes for that. */
  readonly lengths: readonly Length[];
  /** Each thread, in the same order. */
  readonly counts: readonly IndirectCount[];
}

/**
 * Count of a thread folded from threads that run in at unlike lengths, as in a fancy yarn or a backed cloth.
 *
 * @formula folded = foldedLength ÷ Σ(lengths ÷ counts)
 * @units a length; a list, each a length; a list, each an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source davis-1920
 * @example foldedCountFromLengths({ foldedLength: yards(1), lengths: [yards("1.5"), yards(1)], counts: [worstedCount(15), worstedCount(10)] }).in(worstedCount) // 5
 */
export const foldedCountFromLengths: Calculation<FoldedCountFromLengthsInput, IndirectCount> =
  /* @__PURE__ */ calculation(() => ({
    name: "foldedCountFromLengths",
    inputs: {
      foldedLength: positive(Length, "of the folded thread"),
      lengths: listOf(positive(Length, "each thread takes for that")),
      counts: listOf(positive(IndirectCount, "each thread, in the same order")),
    },
    formula: "folded = foldedLength ÷ Σ(lengths ÷ counts)",
    result: positive(IndirectCount, "of the folded thread"),
    resultIn: "counts",
    source: davis1920,
    slips: [{ says: "forgets that the threads run in at unlike lengths", instead: "folded = 1 ÷ Σ(1 ÷ counts)" }],
  }));
