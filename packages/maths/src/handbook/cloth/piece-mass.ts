import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Mass } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface PieceMassInput {
  /** In the piece, unsized. */
  readonly warp: Mass;
  /** To the warp, as size. */
  readonly size: Addition;
  /** In the piece. */
  readonly weft: Mass;
}

/**
 * Mass of a whole piece from its warp, the size put on it, and its weft.
 *
 * @formula mass = warp × (1 + size) + weft
 * @units a mass; a percentage added → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example pieceMass({ warp: ounces(60), size: percentAdded(20), weft: ounces(40) }).in(ounces) // 112
 */
export const pieceMass: Calculation<PieceMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "pieceMass",
  inputs: {
    warp: positive(Mass, "in the piece, unsized"),
    size: added("to the warp, as size"),
    weft: positive(Mass, "in the piece"),
  },
  formula: "mass = warp × (1 + size) + weft",
  result: positive(Mass, "of the piece"),
  source: brooks1892,
}));
