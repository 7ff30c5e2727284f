import { added, atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { horsensVaevekreds } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WarpLengthByAddingInput {
  /** Cut from the one warp. */
  readonly pieces: number;
  /** One piece, washed and hemmed. */
  readonly finishedLength: Length;
  /** Turned under at each end. */
  readonly hemEachEnd: Length;
  /** To the cut length, for the wash. */
  readonly shrinkage: Addition;
  /** To the cut length, for weaving. */
  readonly takeUp: Addition;
  /** Warp that cannot be woven. */
  readonly loomWaste: Length;
}

/**
 * Length of warp as many pages reckon it, both percentages added together and then to the cut length; shorter than the dividing rule gives.
 *
 * @formula
 * ```text
 * cutLength = finishedLength + 2 × hemEachEnd
 * each      = cutLength × (1 + shrinkage + takeUp)
 * warp      = pieces × each + loomWaste
 * ```
 * @units pieces; a length; a percentage added → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source horsens-vaevekreds
 * @example
 * const input = { pieces: 3, finishedLength: centimetres(70), hemEachEnd: centimetres(2), shrinkage: percentAdded(10), takeUp: percentAdded(0), loomWaste: centimetres(75) };
 * warpLengthByAdding(input).in(centimetres) // 319.2
 */
export const warpLengthByAdding: Calculation<WarpLengthByAddingInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "warpLengthByAdding",
  inputs: {
    pieces: whole("pieces", "cut from the one warp", { atLeast: 1 }),
    finishedLength: positive(Length, "one piece, washed and hemmed"),
    hemEachEnd: atLeastZero(Length, "turned under at each end"),
    shrinkage: added("to the cut length, for the wash"),
    takeUp: added("to the cut length, for weaving"),
    loomWaste: atLeastZero(Length, "warp that cannot be woven"),
  },
  formula: `
    cutLength = finishedLength + 2 × hemEachEnd
    each      = cutLength × (1 + shrinkage + takeUp)
    warp      = pieces × each + loomWaste`,
  result: positive(Length, "to wind"),
  forUse: "up",
  source: horsensVaevekreds,
  toldIn: "finishedLength",
}));
