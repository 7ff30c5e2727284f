import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length, PicksPerLength } from "../../units/index.js";

export interface WeftByTurnsInput {
  /** Of the piece, counted where the picks were. */
  readonly wovenLength: Length;
  /** To the length, counted at the loom or on the cloth. */
  readonly picks: PicksPerLength;
  /** Of this yarn, in one round of shots. */
  readonly threads: number;
  /** In one round, those of other yarns too. */
  readonly shots: number;
  /** Not that of the cloth, which is narrower. */
  readonly widthInReed: Length;
  /** Lost at the two tails of the piece. */
  readonly eachStripe: Length;
}

/**
 * Weft of one yarn in a piece where yarns lie together in a shot, or are woven shot by shot in turn.
 *
 * @formula
 * ```text
 * picksInAll = wovenLength × picks
 * laid = picksInAll × threads ÷ shots
 * weft = laid × widthInReed + eachStripe
 * ```
 * @units a length; a number of picks; threads; shots → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example
 * const piece = { wovenLength: inches(20), picks: picksPerInch(16), widthInReed: inches(18) };
 * weftByTurns({ ...piece, threads: 1, shots: 2, eachStripe: inches(0) }).in(inches) // 2880
 */
export const weftByTurns: Calculation<WeftByTurnsInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "weftByTurns",
  inputs: {
    wovenLength: positive(Length, "of the piece, counted where the picks were"),
    picks: positive(PicksPerLength, "to the length, counted at the loom or on the cloth"),
    threads: whole("threads", "of this yarn, in one round of shots", { atLeast: 1 }),
    shots: whole("shots", "in one round, those of other yarns too", { atLeast: 1 }),
    widthInReed: positive(Length, "not that of the cloth, which is narrower"),
    eachStripe: atLeastZero(Length, "lost at the two tails of the piece"),
  },
  formula: `
    picksInAll = wovenLength × picks
    laid = picksInAll × threads ÷ shots
    weft = laid × widthInReed + eachStripe`,
  result: positive(Length, "of this yarn in one piece"),
  source: commonPractice,
}));
