import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { IndirectCount, Mass } from "../../units/index.js";

export interface MassForCountInput {
  /** Of that yarn in a piece of the cloth there is. */
  readonly mass: Mass;
  /** Of the yarn in it. */
  readonly count: IndirectCount;
  /** Of the other yarn. */
  readonly newCount: IndirectCount;
}

/**
 * Mass of the yarn in a piece when only its count changes: the threads to the inch stay, and so does the size.
 *
 * @formula newMass = mass × count ÷ newCount
 * @units a mass; an indirect count → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example massForCount({ mass: pounds(6), count: cottonCount(20), newCount: cottonCount(24) }).in(pounds) // 5
 */
export const massForCount: Calculation<MassForCountInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "massForCount",
  inputs: {
    mass: positive(Mass, "of that yarn in a piece of the cloth there is"),
    count: positive(IndirectCount, "of the yarn in it"),
    newCount: positive(IndirectCount, "of the other yarn"),
  },
  formula: "newMass = mass × count ÷ newCount",
  result: positive(Mass, "of that yarn in a piece of the new cloth"),
  slips: [{ says: "lets the mass grow with the count", instead: "newMass = mass × newCount ÷ count" }],
  source: commonPractice,
}));
