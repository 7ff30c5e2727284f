import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { EndsPerLength, Length } from "../../units/index.js";

export interface EndsUpToInput {
  /** From end 1 to the mark. */
  readonly length: Length;
  /** Of the ends that are spread there. */
  readonly sett: EndsPerLength;
}

/**
 * Whole ends up to a mark across the warp, for a raddle or a mark on the beam.
 *
 * @formula ends = roundDown(length × sett)
 * @units a length; a sett → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example endsUpTo({ length: centimetres(30), sett: endsPerCentimetre("4.1") }) // 123
 */
export const endsUpTo: Calculation<EndsUpToInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsUpTo",
  inputs: {
    length: atLeastZero(Length, "from end 1 to the mark"),
    sett: positive(EndsPerLength, "of the ends that are spread there"),
  },
  formula: "ends = roundDown(length × sett)",
  result: whole("ends", "up to the mark", { atLeast: 0 }),
  source: commonPractice,
}));
