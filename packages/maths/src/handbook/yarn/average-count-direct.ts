import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { DirectCount, Mass } from "../../units/index.js";

export interface AverageCountDirectInput {
  /** Each lot. */
  readonly masses: readonly Mass[];
  /** Each lot, in the same order. */
  readonly counts: readonly DirectCount[];
}

/**
 * Average direct count of lots of yarn, each of its own mass.
 *
 * @formula average = Σmasses ÷ Σ(masses ÷ counts)
 * @units a list, each a mass; a list, each a direct count → a direct count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source gate-textile
 * @example averageCountDirect({ masses: [kilograms(1200), kilograms(1200)], counts: [tex(30), tex(20)] }).in(tex) // 24
 */
export const averageCountDirect: Calculation<AverageCountDirectInput, DirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "averageCountDirect",
    inputs: {
      masses: listOf(positive(Mass, "each lot")),
      counts: listOf(positive(DirectCount, "each lot, in the same order")),
    },
    formula: "average = Σmasses ÷ Σ(masses ÷ counts)",
    result: positive(DirectCount, "of all the lots"),
    resultIn: "counts",
    source: gateTextile,
  }),
);
