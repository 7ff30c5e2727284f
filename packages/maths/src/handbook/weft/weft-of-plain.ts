import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Length, PicksPerLength } from "../../units/index.js";

export interface WeftOfPlainInput {
  /** Of the piece, counted where the picks were. */
  readonly wovenLength: Length;
  /** To the length, counted at the loom or on the cloth. */
  readonly picks: PicksPerLength;
  /** Not that of the cloth, which is narrower. */
  readonly widthInReed: Length;
  /** Lost at the two tails of the piece. */
  readonly eachStripe: Length;
}

/**
 * Weft of one piece woven in one yarn, laid straight, and what is lost at its two tails.
 *
 * @formula
 * ```text
 * picksInAll = wovenLength × picks
 * weft = picksInAll × widthInReed + eachStripe
 * ```
 * @units a length; a number of picks → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example weftOfPlain({ wovenLength: inches(20), picks: picksPerInch(16), widthInReed: inches(18), eachStripe: inches(6) }).in(inches) // 5766
 */
export const weftOfPlain: Calculation<WeftOfPlainInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "weftOfPlain",
  inputs: {
    wovenLength: positive(Length, "of the piece, counted where the picks were"),
    picks: positive(PicksPerLength, "to the length, counted at the loom or on the cloth"),
    widthInReed: positive(Length, "not that of the cloth, which is narrower"),
    eachStripe: atLeastZero(Length, "lost at the two tails of the piece"),
  },
  formula: `
    picksInAll = wovenLength × picks
    weft = picksInAll × widthInReed + eachStripe`,
  result: positive(Length, "of weft in one piece"),
  source: brooks1892,
}));
