import { calculation, positive, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { DiametersPerLength, IndirectCount, diametersPerInch } from "../../units/index.js";

export interface DiametersByProportionInput {
  /** Of the known yarn. */
  readonly knownDiameters: DiametersPerLength;
  /** Of the known yarn. */
  readonly knownCount: IndirectCount;
  /** Of the other yarn, of the same fibre and make. */
  readonly count: IndirectCount;
}

/**
 * Threads that lie side by side in a length, from those of a known yarn: as the square roots of the counts.
 *
 * @formula diameters = knownDiameters × √(count ÷ knownCount)
 * @units diameters in a length, reckoned in diameters per inch; an indirect count → diameters in a length, reckoned in diameters per inch
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example diametersByProportion({ knownDiameters: diametersPerInch(156), knownCount: cottonCount(32), count: cottonCount(50) }).in(diametersPerInch) // 195
 */
export const diametersByProportion: Calculation<DiametersByProportionInput, DiametersPerLength> =
  /* @__PURE__ */ calculation(() => ({
    name: "diametersByProportion",
    inputs: {
      knownDiameters: reckonedIn(positive(DiametersPerLength, "of the known yarn"), [diametersPerInch]),
      knownCount: positive(IndirectCount, "of the known yarn"),
      count: positive(IndirectCount, "of the other yarn, of the same fibre and make"),
    },
    formula: "diameters = knownDiameters × √(count ÷ knownCount)",
    result: reckonedIn(positive(DiametersPerLength, "laid touching"), [diametersPerInch]),
    resultIn: "knownDiameters",
    source: taylor1909,
    slips: [
      {
        says: "takes the diameters as the counts, not as their square roots",
        instead: "diameters = knownDiameters × count ÷ knownCount",
      },
    ],
  }));
