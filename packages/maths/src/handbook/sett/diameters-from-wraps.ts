import { calculation, drawnAs, plainNumber, positive, partsToo } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { osterkampAshenhurst } from "../../sources/index.js";
import { DiametersPerLength, Length, diametersPerCentimetre, diametersPerInch } from "../../units/index.js";

export interface DiametersFromWrapsInput {
  /** Of the yarn, touching. */
  readonly wraps: number;
  /** Of the ruler they cover. */
  readonly width: Length;
  /** 0.7 in the book. */
  readonly ratio: number;
}

/**
 * Diameters in a length as the rule of diameters has them, from the wraps counted by hand, which are fewer; a rule of thumb.
 *
 * @formula diameters = wraps ÷ width ÷ ratio
 * @units wraps; a length; wraps to one diameter → diameters in a length
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source osterkamp-ashenhurst
 * @example diametersFromWraps({ wraps: 14, width: inches(1), ratio: 0.7 }).in(diametersPerInch) // 20
 */
export const diametersFromWraps: Calculation<DiametersFromWrapsInput, DiametersPerLength> = /* @__PURE__ */ calculation(
  () => ({
    name: "diametersFromWraps",
    inputs: {
      wraps: partsToo("wraps", "of the yarn, touching"),
      width: positive(Length, "of the ruler they cover"),
      ratio: drawnAs(plainNumber("wraps to one diameter", "0.7 in the book"), "as given"),
    },
    formula: "diameters = wraps ÷ width ÷ ratio",
    result: positive(DiametersPerLength, "as the rule has them"),
    resultIn: [diametersPerInch, diametersPerCentimetre],
    source: osterkampAshenhurst,
  }),
);
