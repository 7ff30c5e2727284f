import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, Length } from "../../units/index.js";

export interface EndsInWidthInput {
  /** Where the width was measured: in the reed, or in the cloth. */
  readonly sett: EndsPerLength;
  /** In the reed, or of the cloth. */
  readonly width: Length;
}

/**
 * Plain ends for a width: no threading repeat to complete, no end to balance it.
 *
 * @formula ends = roundUp(sett × width)
 * @units a sett; a length → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example endsInWidth({ sett: endsPerInch(20), width: inches("19.5") }) // 390
 */
export const endsInWidth: Calculation<EndsInWidthInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsInWidth",
  inputs: {
    sett: positive(EndsPerLength, "where the width was measured: in the reed, or in the cloth"),
    width: positive(Length, "in the reed, or of the cloth"),
  },
  formula: "ends = roundUp(sett × width)",
  result: whole("ends", "the last perhaps a little past the width", { atLeast: 1 }),
  source: taylor1909,
  slips: [
    {
      says: "counts an end at both edges, as fence posts: one more than the spaces",
      instead: "ends = roundUp(sett × width) + 1",
    },
    {
      says: "counts the spaces between the ends: one fewer than the ends",
      instead: "ends = roundUp(sett × width) − 1",
    },
  ],
}));
