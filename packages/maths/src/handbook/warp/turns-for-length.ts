import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface TurnsForLengthInput {
  /** To wind. */
  readonly warpLength: Length;
  /** Of one turn, with the yarn on its path. */
  readonly measuredTurn: Length;
}

/**
 * Turns of a reel, or rounds of the pegs, for a length of warp, by the path as measured with the yarn.
 *
 * @formula turns = roundUp(warpLength ÷ measuredTurn)
 * @units a length → turns
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example turnsForLength({ warpLength: yards(7), measuredTurn: inches(80) }) // 4
 */
export const turnsForLength: Calculation<TurnsForLengthInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "turnsForLength",
  inputs: {
    warpLength: positive(Length, "to wind"),
    measuredTurn: positive(Length, "of one turn, with the yarn on its path"),
  },
  formula: "turns = roundUp(warpLength ÷ measuredTurn)",
  result: whole("turns", "the last perhaps not full", { atLeast: 1 }),
  source: commonPractice,
}));
