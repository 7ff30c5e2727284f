import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { creativeThreadsWeft } from "../../sources/index.js";
import { Length, PicksPerLength } from "../../units/index.js";

export interface PicksInLengthInput {
  /** Counted where the picks were. */
  readonly wovenLength: Length;
  /** To the length, counted at the loom or on the cloth. */
  readonly picks: PicksPerLength;
}

/**
 * Whole picks in a length of cloth.
 *
 * @formula picksInAll = roundUp(wovenLength × picks)
 * @units a length; a number of picks → picks
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source creative-threads-weft
 * @example picksInLength({ wovenLength: centimetres(220), picks: picksPerCentimetre(8) }) // 1760
 */
export const picksInLength: Calculation<PicksInLengthInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "picksInLength",
  inputs: {
    wovenLength: positive(Length, "counted where the picks were"),
    picks: positive(PicksPerLength, "to the length, counted at the loom or on the cloth"),
  },
  formula: "picksInAll = roundUp(wovenLength × picks)",
  result: whole("picks", "the last perhaps past the length", { atLeast: 1 }),
  source: creativeThreadsWeft,
}));
