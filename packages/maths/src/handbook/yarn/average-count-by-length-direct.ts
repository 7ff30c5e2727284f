import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { DirectCount, Length } from "../../units/index.js";

export interface AverageCountByLengthDirectInput {
  /** Each lot. */
  readonly lengths: readonly Length[];
  /** Each lot, in the same order. */
  readonly counts: readonly DirectCount[];
}

/**
 * Average direct count of lots of yarn, each of its own length.
 *
 * @formula average = Σ(lengths × counts) ÷ Σlengths
 * @units a list, each a length; a list, each a direct count → a direct count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source davis-1920
 * @example averageCountByLengthDirect({ lengths: [metres(10), metres(10)], counts: [tex(30), tex(20)] }).in(tex) // 25
 */
export const averageCountByLengthDirect: Calculation<AverageCountByLengthDirectInput, DirectCount> =
  /* @__PURE__ */ calculation(() => ({
    name: "averageCountByLengthDirect",
    inputs: {
      lengths: listOf(positive(Length, "each lot")),
      counts: listOf(positive(DirectCount, "each lot, in the same order")),
    },
    formula: "average = Σ(lengths × counts) ÷ Σlengths",
    result: positive(DirectCount, "of all the lots"),
    resultIn: "counts",
    source: davis1920,
    slips: [
      {
        says: "averages the lots as if each were told by its mass",
        instead: "average = Σlengths ÷ Σ(lengths ÷ counts)",
      },
    ],
  }));
