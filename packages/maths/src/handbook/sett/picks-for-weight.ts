import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { Mass, PicksPerLength } from "../../units/index.js";

export interface PicksForWeightInput {
  /** Of the cloth there is. */
  readonly picks: PicksPerLength;
  /** Of a piece of that cloth. */
  readonly mass: Mass;
  /** Of a piece of the new cloth, of the same size. */
  readonly newMass: Mass;
}

/**
 * Picks for a heavier or lighter piece of equal firmness: a heavier cloth has fewer and thicker threads.
 *
 * @formula newPicks = picks × mass ÷ newMass
 * @units a number of picks; a mass → a number of picks
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example picksForWeight({ picks: picksPerInch(93), mass: pounds(10), newMass: pounds(15) }).in(picksPerInch) // 62
 */
export const picksForWeight: Calculation<PicksForWeightInput, PicksPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "picksForWeight",
  inputs: {
    picks: positive(PicksPerLength, "of the cloth there is"),
    mass: positive(Mass, "of a piece of that cloth"),
    newMass: positive(Mass, "of a piece of the new cloth, of the same size"),
  },
  formula: "newPicks = picks × mass ÷ newMass",
  result: positive(PicksPerLength, "of the new cloth"),
  resultIn: "picks",
  slips: [{ says: "lets the picks grow with the weight", instead: "newPicks = picks × newMass ÷ mass" }],
  source: taylor1909,
}));
