import { calculation, plainNumber, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";

export interface DiametersByProportionInput {
  /** Of the known yarn. */
  readonly knownDiameters: number;
  /** Of the known yarn. */
  readonly knownCount: IndirectCount;
  /** Of the other yarn, of the same fibre and make. */
  readonly count: IndirectCount;
}

/**
 * Threads that lie side by side in one inch, from those of a known yarn: as the square roots of the counts.
 *
 * @formula diameters = knownDiameters × √(count ÷ knownCount)
 * @units diameters per inch; an indirect count → diameters per inch
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example diametersByProportion({ knownDiameters: 156, knownCount: cottonCount(32), count: cottonCount(50) }) // 195
 */
export const diametersByProportion: Calculation<DiametersByProportionInput, number> = /* @__PURE__ */ calculation(
  () => ({
    name: "diametersByProportion",
    inputs: {
      knownDiameters: plainNumber("diameters per inch", "of the known yarn"),
      knownCount: positive(IndirectCount, "of the known yarn"),
      count: positive(IndirectCount, "of the other yarn, of the same fibre and make"),
    },
    formula: "diameters = knownDiameters × √(count ÷ knownCount)",
    result: plainNumber("diameters per inch", "laid touching"),
    source: taylor1909,
    slips: [
      {
        says: "takes the diameters as the counts, not as their square roots",
        instead: "diameters = knownDiameters × count ÷ knownCount",
      },
    ],
  }),
);
