import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface LengthWithFringeInput {
  /** Of the finished cloth, its fringe not counted. */
  readonly finishedLength: Length;
  /** At each end, finished. */
  readonly fringeEachEnd: Length;
}

/**
 * Length of a finished piece from the tip of one fringe to the tip of the other.
 *
 * @formula whole = finishedLength + 2 × fringeEachEnd
 * @units a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example lengthWithFringe({ finishedLength: centimetres(180), fringeEachEnd: centimetres(10) }).in(centimetres) // 200
 */
export const lengthWithFringe: Calculation<LengthWithFringeInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "lengthWithFringe",
  inputs: {
    finishedLength: positive(Length, "of the finished cloth, its fringe not counted"),
    fringeEachEnd: atLeastZero(Length, "at each end, finished"),
  },
  formula: "whole = finishedLength + 2 × fringeEachEnd",
  result: positive(Length, "from tip to tip"),
  source: commonPractice,
}));
