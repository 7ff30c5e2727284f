import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { avlHomeLoom } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface OldWarpToKeepInput {
  /** Of old warp out of the reed, to the front. */
  readonly pastReed: Length;
  /** From the reed through the last shaft. */
  readonly reedToHeddles: Length;
  /** Of old warp behind the heddles. */
  readonly behindHeddles: Length;
}

/**
 * Length of old warp to leave in the loom when the cloth is cut off, from cut to cut.
 *
 * @formula kept = pastReed + reedToHeddles + behindHeddles
 * @units a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source avl-home-loom
 * @example oldWarpToKeep({ pastReed: inches(6), reedToHeddles: inches(0), behindHeddles: inches(12) }).in(inches) // 18
 */
export const oldWarpToKeep: Calculation<OldWarpToKeepInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "oldWarpToKeep",
  inputs: {
    pastReed: atLeastZero(Length, "of old warp out of the reed, to the front"),
    reedToHeddles: atLeastZero(Length, "from the reed through the last shaft"),
    behindHeddles: atLeastZero(Length, "of old warp behind the heddles"),
  },
  formula: "kept = pastReed + reedToHeddles + behindHeddles",
  result: positive(Length, "of old warp left in the loom"),
  forUse: "up",
  source: avlHomeLoom,
}));
