import { calculation, listOf, positive, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount, Length, percentOf } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface ShareOfThreadInput {
  /** Of the thread in question. */
  readonly length: Length;
  /** Of the thread in question. */
  readonly count: IndirectCount;
  /** Each of the other threads of the fold. */
  readonly otherLengths: readonly Length[];
  /** Each of the other threads, in the same order. */
  readonly otherCounts: readonly IndirectCount[];
}

/**
 * Share that one thread has in the mass of a folded thread, from the lengths that run in together.
 *
 * @formula
 * ```text
 * own   = length ÷ count
 * share = own ÷ (own + Σ(otherLengths ÷ otherCounts))
 * ```
 * @units a length; an indirect count; a list, each a length; a list, each an indirect count → a share in percent
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source davis-1920
 * @example shareOfThread({ length: yards(1), count: worstedCount(48), otherLengths: [yards(1)], otherCounts: [worstedCount(16)] }).in(percentOf) // 25
 */
export const shareOfThread: Calculation<ShareOfThreadInput, Share> = /* @__PURE__ */ calculation(() => ({
  name: "shareOfThread",
  inputs: {
    length: positive(Length, "of the thread in question"),
    count: positive(IndirectCount, "of the thread in question"),
    otherLengths: listOf(positive(Length, "each of the other threads of the fold")),
    otherCounts: listOf(positive(IndirectCount, "each of the other threads, in the same order")),
  },
  formula: `
    own   = length ÷ count
    share = own ÷ (own + Σ(otherLengths ÷ otherCounts))`,
  result: share("of the mass of the folded thread"),
  resultIn: [percentOf],
  source: davis1920,
}));
