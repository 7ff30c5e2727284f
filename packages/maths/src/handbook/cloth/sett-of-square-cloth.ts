import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { fabricWeightGsm } from "../../sources/index.js";
import { endsPerCentimetre, EndsPerLength, endsPerInch, IndirectCount, MassPerArea } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface SettOfSquareClothInput {
  /** Wanted of the cloth. */
  readonly massPerArea: MassPerArea;
  /** Of the yarn as it lies in the cloth. */
  readonly count: IndirectCount;
  /** To the length of the cloth, the same both ways. */
  readonly crimp: Addition;
}

/**
 * Threads to a length, the same both ways and of one yarn, for a cloth of a wanted mass for its size.
 *
 * @formula
 * ```text
 * threads = massPerArea × count ÷ (1 + crimp)
 * sett = threads ÷ 2
 * ```
 * @units a mass per area; an indirect count; a percentage added → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source fabric-weight-gsm
 * @example settOfSquareCloth({ massPerArea: gramsPerSquareMetre(210), count: metricCount(20), crimp: percentAdded(5) }).in(endsPerCentimetre) // 20
 */
export const settOfSquareCloth: Calculation<SettOfSquareClothInput, EndsPerLength> = /* @__PURE__ */ calculation(
  () => ({
    name: "settOfSquareCloth",
    inputs: {
      massPerArea: positive(MassPerArea, "wanted of the cloth"),
      count: positive(IndirectCount, "of the yarn as it lies in the cloth"),
      crimp: added("to the length of the cloth, the same both ways"),
    },
    formula: `
    threads = massPerArea × count ÷ (1 + crimp)
    sett = threads ÷ 2`,
    result: positive(EndsPerLength, "and as many picks"),
    resultIn: [endsPerInch, endsPerCentimetre],
    slips: [{ says: "puts all the mass into the ends", instead: "sett = threads" }],
    source: fabricWeightGsm,
  }),
);
