import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Mass } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface UnsizedMassInput {
  /** Of yarn and size. */
  readonly sizedMass: Mass;
  /** To the mass of the unsized yarn. */
  readonly size: Addition;
}

/**
 * Mass of the yarn in a sized warp, the size divided out.
 *
 * @formula unsized = sizedMass ÷ (1 + size)
 * @units a mass; a percentage added → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example unsizedMass({ sizedMass: pounds(1625), size: percentAdded(25) }).in(pounds) // 1300
 */
export const unsizedMass: Calculation<UnsizedMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "unsizedMass",
  inputs: {
    sizedMass: positive(Mass, "of yarn and size"),
    size: added("to the mass of the unsized yarn"),
  },
  formula: "unsized = sizedMass ÷ (1 + size)",
  result: positive(Mass, "of the yarn alone"),
  source: brooks1892,
}));
