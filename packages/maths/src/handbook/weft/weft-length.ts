import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Length, PicksPerLength } from "../../units/index.js";

export interface WeftLengthInput {
  /** Counted where the picks were. */
  readonly wovenLength: Length;
  /** To the length, counted at the loom or on the cloth. */
  readonly picks: PicksPerLength;
  /** Not that of the cloth, which is narrower. */
  readonly widthInReed: Length;
}

/**
 * Length of weft in a woven length, laid straight from edge to edge of the warp in the reed: no take-up, no waste.
 *
 * @formula
 * ```text
 * picksInAll = wovenLength × picks
 * weft       = picksInAll × widthInReed
 * ```
 * @units a length; a number of picks → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example weftLength({ wovenLength: yards(10), picks: picksPerInch(10), widthInReed: inches(45) }).in(yards) // 4500
 */
export const weftLength: Calculation<WeftLengthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "weftLength",
  inputs: {
    wovenLength: positive(Length, "counted where the picks were"),
    picks: positive(PicksPerLength, "to the length, counted at the loom or on the cloth"),
    widthInReed: positive(Length, "not that of the cloth, which is narrower"),
  },
  formula: `
    picksInAll = wovenLength × picks
    weft       = picksInAll × widthInReed`,
  result: atLeastZero(Length, "of weft laid straight"),
  forUse: "up",
  source: brooks1892,
  toldIn: "wovenLength",
}));
