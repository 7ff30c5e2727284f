import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { EndsPerLength, Mass } from "../../units/index.js";

export interface MassForSettInput {
  /** Of that yarn in a piece of the cloth there is. */
  readonly mass: Mass;
  /** Of the cloth there is. */
  readonly sett: EndsPerLength;
  /** Of the new cloth. */
  readonly newSett: EndsPerLength;
}

/**
 * Mass of the yarn in a piece when only its closeness changes: the counts stay, and so does the size.
 *
 * @formula newMass = mass × newSett ÷ sett
 * @units a mass; a sett → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example massForSett({ mass: pounds(5), sett: endsPerInch(60), newSett: endsPerInch(72) }).in(pounds) // 6
 */
export const massForSett: Calculation<MassForSettInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "massForSett",
  inputs: {
    mass: positive(Mass, "of that yarn in a piece of the cloth there is"),
    sett: positive(EndsPerLength, "of the cloth there is"),
    newSett: positive(EndsPerLength, "of the new cloth"),
  },
  formula: "newMass = mass × newSett ÷ sett",
  result: positive(Mass, "of that yarn in a piece of the new cloth"),
  source: commonPractice,
}));
