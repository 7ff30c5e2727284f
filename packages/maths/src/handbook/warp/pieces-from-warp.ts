import { atLeastZero, calculation, loss, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface PiecesFromWarpInput {
  /** Of warp not yet woven, the waste in it. */
  readonly warpLeft: Length;
  /** Warp that cannot be woven. */
  readonly loomWaste: Length;
  /** Of the thread, from wound to weaving tension. */
  readonly takeUp: Loss;
  /** Of one piece, at weaving tension. */
  readonly wovenLength: Length;
}

/**
 * Whole pieces that the warp left on the loom still gives.
 *
 * @formula
 * ```text
 * clothLeft = (warpLeft − loomWaste) × (1 − takeUp)
 * pieces    = roundDown(clothLeft ÷ wovenLength)
 * ```
 * @units a length; a percentage lost → pieces
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example piecesFromWarp({ warpLeft: inches(100), loomWaste: inches(20), takeUp: percentLost(10), wovenLength: inches(18) }) // 4
 */
export const piecesFromWarp: Calculation<PiecesFromWarpInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "piecesFromWarp",
  inputs: {
    warpLeft: positive(Length, "of warp not yet woven, the waste in it"),
    loomWaste: atLeastZero(Length, "warp that cannot be woven"),
    takeUp: loss("of the thread, from wound to weaving tension"),
    wovenLength: positive(Length, "of one piece, at weaving tension"),
  },
  formula: `
    clothLeft = (warpLeft − loomWaste) × (1 − takeUp)
    pieces    = roundDown(clothLeft ÷ wovenLength)`,
  atLeast: { clothLeft: 0 },
  result: whole("pieces", "that can still be woven", { atLeast: 0 }),
  source: cnch2016,
}));
