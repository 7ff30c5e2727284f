import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Mass } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface SizedMassInput {
  /** Of the warp before sizing. */
  readonly unsizedMass: Mass;
  /** To the mass of the unsized yarn. */
  readonly size: Addition;
}

/**
 * Mass of a warp when size is put on, a percentage of the unsized yarn.
 *
 * @formula sized = unsizedMass × (1 + size)
 * @units a mass; a percentage added → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example sizedMass({ unsizedMass: pounds(1300), size: percentAdded(25) }).in(pounds) // 1625
 */
export const sizedMass: Calculation<SizedMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "sizedMass",
  inputs: {
    unsizedMass: positive(Mass, "of the warp before sizing"),
    size: added("to the mass of the unsized yarn"),
  },
  formula: "sized = unsizedMass × (1 + size)",
  result: positive(Mass, "of yarn and size"),
  source: brooks1892,
}));
