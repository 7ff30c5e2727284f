import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { IndirectCount, Length, Mass, metresPerKilogram, yardsPerOunce, yardsPerPound } from "../../units/index.js";

export interface CountOfLabelInput {
  /** On one package, as the label has it. */
  readonly length: Length;
  /** Of that length, as the label has it. */
  readonly mass: Mass;
}

/**
 * Count of a yarn from its label: so much length to so much mass.
 *
 * @formula count = length ÷ mass
 * @units a length; a mass → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example countOfLabel({ length: metres(300), mass: grams(100) }).in(metricCount) // 3
 */
export const countOfLabel: Calculation<CountOfLabelInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "countOfLabel",
  inputs: {
    length: positive(Length, "on one package, as the label has it"),
    mass: positive(Mass, "of that length, as the label has it"),
  },
  formula: "count = length ÷ mass",
  result: positive(IndirectCount, "of the yarn"),
  resultIn: [metresPerKilogram, yardsPerPound, yardsPerOunce],
  source: commonPractice,
}));
