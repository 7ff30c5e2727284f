import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { fabricWeightGsm } from "../../sources/index.js";
import {
  EndsPerLength,
  IndirectCount,
  MassPerArea,
  gramsPerSquareMetre,
  ouncesPerSquareYard,
} from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WarpMassPerAreaInput {
  /** In the cloth as weighed. */
  readonly sett: EndsPerLength;
  /** Of the yarn as it lies in the cloth. */
  readonly count: IndirectCount;
  /** To the length of the cloth, of the warp. */
  readonly crimp: Addition;
}

/**
 * Mass of the warp in a piece of cloth for its size, from an indirect count.
 *
 * @formula mass = sett × (1 + crimp) ÷ count
 * @units a sett; an indirect count; a percentage added → a mass per area
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source fabric-weight-gsm
 * @example warpMassPerArea({ sett: endsPerCentimetre(20), count: metricCount(20), crimp: percentAdded(5) }).in(gramsPerSquareMetre) // 105
 */
export const warpMassPerArea: Calculation<WarpMassPerAreaInput, MassPerArea> = /* @__PURE__ */ calculation(() => ({
  name: "warpMassPerArea",
  inputs: {
    sett: positive(EndsPerLength, "in the cloth as weighed"),
    count: positive(IndirectCount, "of the yarn as it lies in the cloth"),
    crimp: added("to the length of the cloth, of the warp"),
  },
  formula: "mass = sett × (1 + crimp) ÷ count",
  result: positive(MassPerArea, "of the warp alone"),
  resultIn: [gramsPerSquareMetre, ouncesPerSquareYard],
  source: fabricWeightGsm,
}));
