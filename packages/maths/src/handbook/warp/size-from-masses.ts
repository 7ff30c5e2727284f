import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Mass, percentAdded } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface SizeFromMassesInput {
  /** Of the warp before sizing. */
  readonly unsizedMass: Mass;
  /** Of yarn and size. */
  readonly sizedMass: Mass;
}

/**
 * Size put on a warp, from its mass before and after, as a percentage of the unsized yarn.
 *
 * @formula size = (sizedMass − unsizedMass) ÷ unsizedMass
 * @units a mass → a percentage added
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example sizeFromMasses({ unsizedMass: pounds(10), sizedMass: pounds(14) }).in(percentAdded) // 40
 */
export const sizeFromMasses: Calculation<SizeFromMassesInput, Addition> = /* @__PURE__ */ calculation(() => ({
  name: "sizeFromMasses",
  inputs: {
    unsizedMass: positive(Mass, "of the warp before sizing"),
    sizedMass: positive(Mass, "of yarn and size"),
  },
  formula: "size = (sizedMass − unsizedMass) ÷ unsizedMass",
  result: added("to the mass of the unsized yarn"),
  resultIn: [percentAdded],
  source: brooks1892,
}));
