import { calculation, plainNumber, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Length, PicksPerLength, picksPerInch, picksPerCentimetre } from "../../units/index.js";

export interface PicksFromGlassInput {
  /** Under the glass, halves counted. */
  readonly counted: number;
  /** The width of cloth it shows. */
  readonly glass: Length;
}

/**
 * Closeness of the picks from those counted under a glass of known width.
 *
 * @formula picks = counted ÷ glass
 * @units picks; a length → a number of picks
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example picksFromGlass({ counted: 12, glass: inches("0.5") }).in(picksPerInch) // 24
 */
export const picksFromGlass: Calculation<PicksFromGlassInput, PicksPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "picksFromGlass",
  inputs: {
    counted: plainNumber("picks", "under the glass, halves counted"),
    glass: positive(Length, "the width of cloth it shows"),
  },
  formula: "picks = counted ÷ glass",
  result: positive(PicksPerLength, "counted where the glass lay"),
  resultIn: [picksPerInch, picksPerCentimetre],
  source: brooks1892,
}));
