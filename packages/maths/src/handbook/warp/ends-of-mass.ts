import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";

export interface EndsOfMassInput {
  /** That one chain may weigh. */
  readonly mass: Mass;
  /** Of one end, as long as the warp. */
  readonly massOfEnd: Mass;
}

/**
 * Ends of one yarn that a chain may hold, where it may weigh no more than so much.
 *
 * @formula ends = roundDown(mass ÷ massOfEnd)
 * @units a mass → ends
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example endsOfMass({ mass: grams(80), massOfEnd: grams("0.60406") }) // 132
 */
export const endsOfMass: Calculation<EndsOfMassInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsOfMass",
  inputs: {
    mass: positive(Mass, "that one chain may weigh"),
    massOfEnd: positive(Mass, "of one end, as long as the warp"),
  },
  formula: "ends = roundDown(mass ÷ massOfEnd)",
  result: whole("ends", "of a chain", { atLeast: 0 }),
  source: commonPractice,
}));
