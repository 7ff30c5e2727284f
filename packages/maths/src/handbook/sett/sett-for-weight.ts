import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, Mass } from "../../units/index.js";

export interface SettForWeightInput {
  /** Of the cloth there is. */
  readonly sett: EndsPerLength;
  /** Of a piece of that cloth. */
  readonly mass: Mass;
  /** Of a piece of the new cloth, of the same size. */
  readonly newMass: Mass;
}

/**
 * Sett that makes the same cloth heavier or lighter, just as firm, in the count that goes with it: a heavier cloth has fewer and thicker ends.
 *
 * @formula newSett = sett × mass ÷ newMass
 * @units a sett; a mass → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example settForWeight({ sett: endsPerInch(93), mass: pounds(10), newMass: pounds(15) }).in(endsPerInch) // 62
 */
export const settForWeight: Calculation<SettForWeightInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settForWeight",
  inputs: {
    sett: positive(EndsPerLength, "of the cloth there is"),
    mass: positive(Mass, "of a piece of that cloth"),
    newMass: positive(Mass, "of a piece of the new cloth, of the same size"),
  },
  formula: "newSett = sett × mass ÷ newMass",
  result: positive(EndsPerLength, "of the new cloth"),
  resultIn: "sett",
  source: taylor1909,
  slips: [{ says: "lets the sett grow with the weight", instead: "newSett = sett × newMass ÷ mass" }],
}));
