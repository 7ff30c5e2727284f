import { atLeastZero, calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface WeftOfPiecesInput {
  /** Woven alike. */
  readonly number: number;
  /** Of this yarn in one of them. */
  readonly weft: Length;
}

/**
 * Weft of one yarn in so many pieces that are woven alike.
 *
 * @formula weftInAll = number × weft
 * @units entries; a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example weftOfPieces({ number: 2, weft: yards(136) }).in(yards) // 272
 */
export const weftOfPieces: Calculation<WeftOfPiecesInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "weftOfPieces",
  inputs: {
    number: whole("entries", "woven alike", { atLeast: 0 }),
    weft: atLeastZero(Length, "of this yarn in one of them"),
  },
  formula: "weftInAll = number × weft",
  result: atLeastZero(Length, "of this yarn in all of them"),
  source: commonPractice,
}));
