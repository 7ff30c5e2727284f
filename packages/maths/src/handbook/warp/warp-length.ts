import { atLeastZero, calculation, loss, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface WarpLengthInput {
  /** Cut from the one warp. */
  readonly pieces: number;
  /** One piece, washed and hemmed. */
  readonly finishedLength: Length;
  /** Turned under at each end. */
  readonly hemEachEnd: Length;
  /** Of the cloth, from weaving tension to finished. */
  readonly loomToFinished: Loss;
  /** Of the thread, from wound to weaving tension. */
  readonly takeUp: Loss;
  /** Warp that cannot be woven. */
  readonly loomWaste: Length;
}

/**
 * Length of warp to wind for a number of pieces, shrinkage and take-up divided out one after the other.
 *
 * @formula
 * ```text
 * cutLength     = finishedLength + 2 × hemEachEnd
 * onLoom        = pieces × cutLength ÷ (1 − loomToFinished)
 * threadInCloth = onLoom ÷ (1 − takeUp)
 * warp          = threadInCloth + loomWaste
 * ```
 * @units pieces; a length; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source cnch-2016
 * @example
 * const input = { pieces: 8, finishedLength: inches(21), hemEachEnd: inches(1), loomToFinished: percentLost(10), takeUp: percentLost(8), loomWaste: inches(30) };
 * warpLength(input).in(yards) // 7.00617…
 */
export const warpLength: Calculation<WarpLengthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "warpLength",
  inputs: {
    pieces: whole("pieces", "cut from the one warp", { atLeast: 1 }),
    finishedLength: positive(Length, "one piece, washed and hemmed"),
    hemEachEnd: atLeastZero(Length, "turned under at each end"),
    loomToFinished: loss("of the cloth, from weaving tension to finished"),
    takeUp: loss("of the thread, from wound to weaving tension"),
    loomWaste: atLeastZero(Length, "warp that cannot be woven"),
  },
  formula: `
    cutLength     = finishedLength + 2 × hemEachEnd
    onLoom        = pieces × cutLength ÷ (1 − loomToFinished)
    threadInCloth = onLoom ÷ (1 − takeUp)
    warp          = threadInCloth + loomWaste`,
  result: positive(Length, "to wind"),
  forUse: "up",
  source: cnch2016,
  toldIn: "finishedLength",
  slips: [
    {
      says: "counts the loom waste once for every piece",
      instead: "warp = threadInCloth + pieces × loomWaste",
    },
  ],
}));
