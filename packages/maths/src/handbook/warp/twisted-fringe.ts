import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface TwistedFringeInput {
  /** Of warp left unwoven at each end of a piece. */
  readonly fringeEachEnd: Length;
  /** Of its length in twisting. */
  readonly twist: Loss;
}

/**
 * Length of a fringe once it is twisted or plied.
 *
 * @formula twisted = fringeEachEnd × (1 − twist)
 * @units a length; a percentage lost → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example twistedFringe({ fringeEachEnd: centimetres(12), twist: percentLost(25) }).in(centimetres) // 9
 */
export const twistedFringe: Calculation<TwistedFringeInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "twistedFringe",
  inputs: {
    fringeEachEnd: positive(Length, "of warp left unwoven at each end of a piece"),
    twist: loss("of its length in twisting"),
  },
  formula: "twisted = fringeEachEnd × (1 − twist)",
  result: positive(Length, "of the finished fringe at each end"),
  source: commonPractice,
}));
