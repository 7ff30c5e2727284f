import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface StripLengthInput {
  /** Of the cloth to be cut. */
  readonly clothLength: Length;
  /** Of that cloth. */
  readonly clothWidth: Length;
  /** Of one strip as it is cut. */
  readonly stripWidth: Length;
}

/**
 * Length of the yarn cut from a cloth in strips of one width, round and round or joined end to end; joins not counted.
 *
 * @formula strip = clothLength × clothWidth ÷ stripWidth
 * @units a length → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example stripLength({ clothLength: yards(2), clothWidth: inches(36), stripWidth: inches(1) }).in(yards) // 72
 */
export const stripLength: Calculation<StripLengthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "stripLength",
  inputs: {
    clothLength: positive(Length, "of the cloth to be cut"),
    clothWidth: positive(Length, "of that cloth"),
    stripWidth: positive(Length, "of one strip as it is cut"),
  },
  formula: "strip = clothLength × clothWidth ÷ stripWidth",
  result: positive(Length, "of strip"),
  source: commonPractice,
}));
