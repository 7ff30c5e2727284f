import { calculation, drawnAs, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { osterkampAshenhurst } from "../../sources/index.js";

export interface DiametersFromWrapsInput {
  /** Counted in the length. */
  readonly wraps: number;
  /** 0.7 in the book. */
  readonly ratio: number;
}

/**
 * Diameters in a length as the rule of diameters has them, from the wraps counted by hand, which are fewer; a rule of thumb.
 *
 * @formula diameters = wraps ÷ ratio
 * @units wraps; wraps to one diameter → diameters
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source osterkamp-ashenhurst
 * @example diametersFromWraps({ wraps: 14, ratio: 0.7 }) // 20
 */
export const diametersFromWraps: Calculation<DiametersFromWrapsInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "diametersFromWraps",
  inputs: {
    wraps: plainNumber("wraps", "counted in the length"),
    ratio: drawnAs(plainNumber("wraps to one diameter", "0.7 in the book"), "as given"),
  },
  formula: "diameters = wraps ÷ ratio",
  result: plainNumber("diameters", "in the same length"),
  source: osterkampAshenhurst,
}));
