import { atLeastZero, calculation, listOf, loss, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface WarpLengthForSizesInput {
  /** Of one size. */
  readonly pieces: readonly number[];
  /** One piece of that size, washed and hemmed. */
  readonly finishedLength: readonly Length[];
  /** Turned under at each end of such a piece. */
  readonly hemEachEnd: readonly Length[];
  /** Of warp left unwoven at each end of such a piece. */
  readonly fringeEachEnd: readonly Length[];
  /** Woven to try the beat, at weaving tension. */
  readonly sample: Length;
  /** Of the cloth, from weaving tension to finished. */
  readonly loomToFinished: Loss;
  /** Of the thread, from wound to weaving tension. */
  readonly takeUp: Loss;
  /** Warp that cannot be woven. */
  readonly loomWaste: Length;
}

/**
 * Length of one warp for pieces of several sizes: hems are woven and shrink with the cloth, fringes are warp left unwoven.
 *
 * @formula
 * ```text
 * cutLengths    = Σ(pieces × (finishedLength + 2 × hemEachEnd))
 * onLoom        = cutLengths ÷ (1 − loomToFinished) + sample
 * threadInCloth = onLoom ÷ (1 − takeUp)
 * fringes       = Σ(2 × pieces × fringeEachEnd)
 * warp          = threadInCloth + fringes + loomWaste
 * ```
 * @units a list, each pieces; a list, each a length; a length; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source cnch-2016
 * @example
 * const input = { pieces: [1, 6], finishedLength: [inches(76), inches(17)], hemEachEnd: [inches(0), inches(0)], fringeEachEnd: [inches(4), inches(0)], sample: inches(0), loomToFinished: percentLost(0), takeUp: percentLost(0), loomWaste: inches(0) };
 * warpLengthForSizes(input).in(inches) // 186
 */
export const warpLengthForSizes: Calculation<WarpLengthForSizesInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "warpLengthForSizes",
  inputs: {
    pieces: listOf(whole("pieces", "of one size", { atLeast: 1 })),
    finishedLength: listOf(positive(Length, "one piece of that size, washed and hemmed")),
    hemEachEnd: listOf(atLeastZero(Length, "turned under at each end of such a piece")),
    fringeEachEnd: listOf(atLeastZero(Length, "of warp left unwoven at each end of such a piece")),
    sample: atLeastZero(Length, "woven to try the beat, at weaving tension"),
    loomToFinished: loss("of the cloth, from weaving tension to finished"),
    takeUp: loss("of the thread, from wound to weaving tension"),
    loomWaste: atLeastZero(Length, "warp that cannot be woven"),
  },
  formula: `
    cutLengths    = Σ(pieces × (finishedLength + 2 × hemEachEnd))
    onLoom        = cutLengths ÷ (1 − loomToFinished) + sample
    threadInCloth = onLoom ÷ (1 − takeUp)
    fringes       = Σ(2 × pieces × fringeEachEnd)
    warp          = threadInCloth + fringes + loomWaste`,
  result: positive(Length, "to wind"),
  forUse: "up",
  source: cnch2016,
  slips: [
    {
      says: "lets the fringes shrink with the cloth, though they are not woven",
      instead: "warp = (onLoom + fringes) ÷ (1 − takeUp) + loomWaste",
    },
  ],
}));
