import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { IndirectCount, Mass } from "../../units/index.js";

export interface AverageCountByMassInput {
  /** Each lot. */
  readonly masses: readonly Mass[];
  /** Each lot, in the same order. */
  readonly counts: readonly IndirectCount[];
}

/**
 * Average count of lots of yarn, each of its own mass.
 *
 * @formula average = Σ(masses × counts) ÷ Σmasses
 * @units a list, each a mass; a list, each an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source gate-textile
 * @example averageCountByMass({ masses: [pounds(1), pounds(1)], counts: [cottonCount(10), cottonCount(20)] }).in(cottonCount) // 15
 */
export const averageCountByMass: Calculation<AverageCountByMassInput, IndirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "averageCountByMass",
    inputs: {
      masses: listOf(positive(Mass, "each lot")),
      counts: listOf(positive(IndirectCount, "each lot, in the same order")),
    },
    formula: "average = Σ(masses × counts) ÷ Σmasses",
    result: positive(IndirectCount, "of all the lots"),
    resultIn: "counts",
    source: gateTextile,
    slips: [
      {
        says: "averages the lots as if each were told by its length",
        instead: "average = Σmasses ÷ Σ(masses ÷ counts)",
      },
    ],
  }),
);
