import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount, Length } from "../../units/index.js";

export interface AverageCountByLengthInput {
  /** Each lot. */
  readonly lengths: readonly Length[];
  /** Each lot, in the same order. */
  readonly counts: readonly IndirectCount[];
}

/**
 * Average count of lots of yarn, each of its own length: that of a warp of so many ends of each count.
 *
 * @formula average = Σlengths ÷ Σ(lengths ÷ counts)
 * @units a list, each a length; a list, each an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source davis-1920
 * @example averageCountByLength({ lengths: [yards(200), yards(100)], counts: [cottonCount(20), cottonCount(10)] }).in(cottonCount) // 15
 */
export const averageCountByLength: Calculation<AverageCountByLengthInput, IndirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "averageCountByLength",
    inputs: {
      lengths: listOf(positive(Length, "each lot")),
      counts: listOf(positive(IndirectCount, "each lot, in the same order")),
    },
    formula: "average = Σlengths ÷ Σ(lengths ÷ counts)",
    result: positive(IndirectCount, "of all the lots"),
    resultIn: "counts",
    source: davis1920,
    slips: [
      {
        says: "takes the plain mean of the counts by their lengths",
        instead: "average = Σ(lengths × counts) ÷ Σlengths",
      },
    ],
  }),
);
