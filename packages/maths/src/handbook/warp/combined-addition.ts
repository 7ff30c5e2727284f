import { added, calculation } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { percentAdded } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface CombinedAdditionInput {
  /** To what there was at the beginning. */
  readonly first: Addition;
  /** To what the first has made. */
  readonly second: Addition;
}

/**
 * One percentage added for two that follow each other, the second added to what the first has made.
 *
 * @formula
 * ```text
 * grown = (1 + first) × (1 + second)
 * addition = grown − 1
 * ```
 * @units a percentage added → a percentage added
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example combinedAddition({ first: percentAdded(10), second: percentAdded(10) }).in(percentAdded) // 21
 */
export const combinedAddition: Calculation<CombinedAdditionInput, Addition> = /* @__PURE__ */ calculation(() => ({
  name: "combinedAddition",
  inputs: {
    first: added("to what there was at the beginning"),
    second: added("to what the first has made"),
  },
  formula: `
    grown = (1 + first) × (1 + second)
    addition = grown − 1`,
  result: added("to what there was at the beginning"),
  resultIn: [percentAdded],
  slips: [{ says: "adds the two percentages", instead: "addition = first + second" }],
  source: commonPractice,
}));
