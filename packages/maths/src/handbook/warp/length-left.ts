import { atLeastZero, calculation } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface LengthLeftInput {
  /** There at first. */
  readonly length: Length;
  /** From it. */
  readonly taken: Length;
}

/**
 * What is left of a length when some is taken from it: of a warp that is longer than needed, of a yarn.
 *
 * @formula left = length − taken
 * @units a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example lengthLeft({ length: yards(15), taken: inches(523) }).in(inches) // 17
 */
export const lengthLeft: Calculation<LengthLeftInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "lengthLeft",
  inputs: {
    length: atLeastZero(Length, "there at first"),
    taken: atLeastZero(Length, "from it"),
  },
  formula: "left = length − taken",
  result: atLeastZero(Length, "that is left"),
  source: commonPractice,
}));
