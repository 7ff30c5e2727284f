import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import {
  DirectCount,
  EndsPerLength,
  MassPerArea,
  PicksPerLength,
  gramsPerSquareMetre,
  ouncesPerSquareYard,
} from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface ClothMassPerAreaDirectInput {
  /** In the cloth as weighed. */
  readonly sett: EndsPerLength;
  /** In the cloth as weighed. */
  readonly picks: PicksPerLength;
  /** Of the warp as it lies in the cloth. */
  readonly warpCount: DirectCount;
  /** Of the weft as it lies in the cloth. */
  readonly weftCount: DirectCount;
  /** To the length of the cloth, of the warp. */
  readonly warpCrimp: Addition;
  /** To the width of the cloth, of the weft. */
  readonly weftCrimp: Addition;
}

/**
 * Mass of a cloth for its size, from direct counts.
 *
 * @formula
 * ```text
 * warp = sett × warpCount × (1 + warpCrimp)
 * weft = picks × weftCount × (1 + weftCrimp)
 * mass = warp + weft
 * ```
 * @units a sett; a number of picks; a direct count; a percentage added → a mass per area
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example clothMassPerAreaDirect({ sett: endsPerCentimetre(20), picks: picksPerCentimetre(20), warpCount: tex(50), weftCount: tex(25), warpCrimp: percentAdded(5), weftCrimp: percentAdded(10) }).in(gramsPerSquareMetre) // 160
 */
export const clothMassPerAreaDirect: Calculation<ClothMassPerAreaDirectInput, MassPerArea> =
  /* @__PURE__ */ calculation(() => ({
    name: "clothMassPerAreaDirect",
    inputs: {
      sett: positive(EndsPerLength, "in the cloth as weighed"),
      picks: positive(PicksPerLength, "in the cloth as weighed"),
      warpCount: positive(DirectCount, "of the warp as it lies in the cloth"),
      weftCount: positive(DirectCount, "of the weft as it lies in the cloth"),
      warpCrimp: added("to the length of the cloth, of the warp"),
      weftCrimp: added("to the width of the cloth, of the weft"),
    },
    formula: `
    warp = sett × warpCount × (1 + warpCrimp)
    weft = picks × weftCount × (1 + weftCrimp)
    mass = warp + weft`,
    result: positive(MassPerArea, "of the cloth"),
    resultIn: [gramsPerSquareMetre, ouncesPerSquareYard],
    source: gateTextile,
    slips: [{ says: "leaves the crimp out", instead: "warp = sett × warpCount\nweft = picks × weftCount" }],
  }));
