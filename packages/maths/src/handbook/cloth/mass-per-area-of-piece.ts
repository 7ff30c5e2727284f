import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { gramsPerSquareMetre, Length, Mass, MassPerArea, ouncesPerSquareYard } from "../../units/index.js";

export interface MassPerAreaOfPieceInput {
  /** Of the piece, its fringes not counted. */
  readonly mass: Mass;
  /** Of the piece, as it was weighed. */
  readonly length: Length;
  /** Of the piece, selvedges counted in. */
  readonly width: Length;
}

/**
 * How heavy a cloth is for its size, from the mass of a piece and its two measures.
 *
 * @formula massPerArea = mass ÷ (length × width)
 * @units a mass; a length → a mass per area
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example massPerAreaOfPiece({ mass: grams(120), length: metres(2), width: metres("0.4") }).in(gramsPerSquareMetre) // 150
 */
export const massPerAreaOfPiece: Calculation<MassPerAreaOfPieceInput, MassPerArea> = /* @__PURE__ */ calculation(
  () => ({
    name: "massPerAreaOfPiece",
    inputs: {
      mass: positive(Mass, "of the piece, its fringes not counted"),
      length: positive(Length, "of the piece, as it was weighed"),
      width: positive(Length, "of the piece, selvedges counted in"),
    },
    formula: "massPerArea = mass ÷ (length × width)",
    result: positive(MassPerArea, "of the cloth as it was weighed"),
    resultIn: [gramsPerSquareMetre, ouncesPerSquareYard],
    source: commonPractice,
  }),
);
