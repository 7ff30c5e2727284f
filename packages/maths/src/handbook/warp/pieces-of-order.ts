import { atLeastZero, calculation, loss, noneOrMore, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface PiecesOfOrderInput {
  /** Of the whole warp. */
  readonly warpLength: Length;
  /** Warp that cannot be woven. */
  readonly loomWaste: Length;
  /** Of the thread, from wound to weaving tension. */
  readonly takeUp: Loss;
  /** Of each other kind that is woven on it. */
  readonly otherNumbers: readonly number[];
  /** Of one of that kind, at weaving tension. */
  readonly otherWoven: readonly Length[];
  /** Of warp left unwoven at each end of one of that kind. */
  readonly otherFringes: readonly Length[];
  /** Of one piece, at weaving tension. */
  readonly wovenLength: Length;
  /** Of warp left unwoven at each end of one piece. */
  readonly fringeEachEnd: Length;
  /** Woven between two and cut away. */
  readonly breakLength: Length;
}

/**
 * Most whole pieces of one kind that a warp of a fixed length still gives beside all else that is woven on it.
 *
 * Between two that are woven stands one break, as between a piece and what is woven before it.
 *
 * @formula
 * ```text
 * others = ΣotherNumbers
 * wovenOthers = Σ(otherNumbers × otherWoven) + (others − 1) × breakLength
 * warpOthers = wovenOthers ÷ (1 − takeUp) + Σ(2 × otherNumbers × otherFringes)
 * onePiece = (wovenLength + breakLength) ÷ (1 − takeUp) + 2 × fringeEachEnd
 * pieces = roundDown((warpLength − loomWaste − warpOthers) ÷ onePiece)
 * ```
 * @units a length; a percentage lost; a list, each entries; a list, each a length → pieces
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example
 * const others = { otherNumbers: [1], otherWoven: [inches(3)], otherFringes: [inches(0)] };
 * const piece = { wovenLength: inches(30), fringeEachEnd: inches(0), breakLength: inches(2) };
 * piecesOfOrder({ warpLength: inches(180), loomWaste: inches(17), takeUp: percentLost(0), ...others, ...piece }) // 5
 */
export const piecesOfOrder: Calculation<PiecesOfOrderInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "piecesOfOrder",
  inputs: {
    warpLength: positive(Length, "of the whole warp"),
    loomWaste: atLeastZero(Length, "warp that cannot be woven"),
    takeUp: loss("of the thread, from wound to weaving tension"),
    otherNumbers: noneOrMore(whole("entries", "of each other kind that is woven on it", { atLeast: 0 })),
    otherWoven: noneOrMore(atLeastZero(Length, "of one of that kind, at weaving tension")),
    otherFringes: noneOrMore(atLeastZero(Length, "of warp left unwoven at each end of one of that kind")),
    wovenLength: positive(Length, "of one piece, at weaving tension"),
    fringeEachEnd: atLeastZero(Length, "of warp left unwoven at each end of one piece"),
    breakLength: atLeastZero(Length, "woven between two and cut away"),
  },
  formula: `
    others = ΣotherNumbers
    wovenOthers = Σ(otherNumbers × otherWoven) + (others − 1) × breakLength
    warpOthers = wovenOthers ÷ (1 − takeUp) + Σ(2 × otherNumbers × otherFringes)
    onePiece = (wovenLength + breakLength) ÷ (1 − takeUp) + 2 × fringeEachEnd
    pieces = roundDown((warpLength − loomWaste − warpOthers) ÷ onePiece)`,
  result: whole("pieces", "that the warp gives", { atLeast: 0 }),
  source: cnch2016,
}));
