import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import {
  EndsPerLength,
  IndirectCount,
  MassPerArea,
  PicksPerLength,
  gramsPerSquareMetre,
  ouncesPerSquareYard,
} from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface ClothMassPerAreaInput {
  /** In the cloth as weighed. */
  readonly sett: EndsPerLength;
  /** In the cloth as weighed. */
  readonly picks: PicksPerLength;
  /** Of the warp as it lies in the cloth. */
  readonly warpCount: IndirectCount;
  /** Of the weft as it lies in the cloth. */
  readonly weftCount: IndirectCount;
  /** To the length of the cloth, of the warp. */
  readonly warpCrimp: Addition;
  /** To the width of the cloth, of the weft. */
  readonly weftCrimp: Addition;
}

/**
 * Mass of a cloth for its size, from indirect counts.
 *
 * @formula
 * ```text
 * warp = sett × (1 + warpCrimp) ÷ warpCount
 * weft = picks × (1 + weftCrimp) ÷ weftCount
 * mass = warp + weft
 * ```
 * @units a sett; a number of picks; an indirect count; a percentage added → a mass per area
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example clothMassPerArea({ sett: endsPerCentimetre(20), picks: picksPerCentimetre(20), warpCount: metricCount(20), weftCount: metricCount(40), warpCrimp: percentAdded(5), weftCrimp: percentAdded(10) }).in(gramsPerSquareMetre) // 160
 */
export const clothMassPerArea: Calculation<ClothMassPerAreaInput, MassPerArea> = /* @__PURE__ */ calculation(() => ({
  name: "clothMassPerArea",
  inputs: {
    sett: positive(EndsPerLength, "in the cloth as weighed"),
    picks: positive(PicksPerLength, "in the cloth as weighed"),
    warpCount: positive(IndirectCount, "of the warp as it lies in the cloth"),
    weftCount: positive(IndirectCount, "of the weft as it lies in the cloth"),
    warpCrimp: added("to the length of the cloth, of the warp"),
    weftCrimp: added("to the width of the cloth, of the weft"),
  },
  formula: `
    warp = sett × (1 + warpCrimp) ÷ warpCount
    weft = picks × (1 + weftCrimp) ÷ weftCount
    mass = warp + weft`,
  result: positive(MassPerArea, "of the cloth"),
  resultIn: [gramsPerSquareMetre, ouncesPerSquareYard],
  source: gateTextile,
  slips: [{ says: "leaves the crimp out", instead: "warp = sett ÷ warpCount\nweft = picks ÷ weftCount" }],
}));
