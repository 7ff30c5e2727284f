import { calculation, drawnAs, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";

export interface DiameterByCoefficientInput {
  /** 0.00444 for cotton as spun. */
  readonly coefficient: number;
  /** Of the yarn. */
  readonly tex: number;
  /** Density of the fibre. */
  readonly gramsPerCubicCentimetre: number;
}

/**
 * Diameter of a yarn in centimetres by a coefficient that holds how closely its fibres are packed.
 *
 * @formula diameter = coefficient × √(tex ÷ gramsPerCubicCentimetre)
 * @units coefficient of the rule; tex; grams per cubic centimetre → centimetres
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-tf
 * @example diameterByCoefficient({ coefficient: 0.00444, tex: 54, gramsPerCubicCentimetre: 1.5 }) // 0.02664
 */
export const diameterByCoefficient: Calculation<DiameterByCoefficientInput, number> = /* @__PURE__ */ calculation(
  () => ({
    name: "diameterByCoefficient",
    inputs: {
      coefficient: drawnAs(plainNumber("coefficient of the rule", "0.00444 for cotton as spun"), "as given"),
      tex: plainNumber("tex", "of the yarn"),
      gramsPerCubicCentimetre: drawnAs(plainNumber("grams per cubic centimetre", "density of the fibre"), "as given"),
    },
    formula: "diameter = coefficient × √(tex ÷ gramsPerCubicCentimetre)",
    result: plainNumber("centimetres", "across the yarn, taken as round"),
    source: gateTextile,
  }),
);
