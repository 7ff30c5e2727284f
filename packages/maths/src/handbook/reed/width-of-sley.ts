import { calculation, listOf, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { Length, DentsPerLength } from "../../units/index.js";

export interface WidthOfSleyInput {
  /** Of the reed. */
  readonly reed: DentsPerLength;
  /** That follow each other, sleyed alike. */
  readonly dents: readonly number[];
}

/**
 * Width of a sleying in the reed, its empty dents counted.
 *
 * @formula width = Σdents ÷ reed
 * @units a reed number; a list, each dents → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source taylor-1909
 * @example widthOfSley({ reed: dentsPerInch(15), dents: [20, 10] }).in(inches) // 2
 */
export const widthOfSley: Calculation<WidthOfSleyInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "widthOfSley",
  inputs: {
    reed: positive(DentsPerLength, "of the reed"),
    dents: listOf(whole("dents", "that follow each other, sleyed alike", { atLeast: 1 })),
  },
  formula: "width = Σdents ÷ reed",
  result: positive(Length, "in the reed"),
  source: taylor1909,
}));
