import { calculation, drawnAs, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";

export interface TexFromDiameterInput {
  /** Across the yarn, taken as round. */
  readonly diameter: number;
  /** 0.00444 for cotton as spun. */
  readonly coefficient: number;
  /** Density of the fibre. */
  readonly gramsPerCubicCentimetre: number;
}

/**
 * Tex of a yarn from its diameter in centimetres, by a coefficient that holds how closely its fibres are packed.
 *
 * @formula
 * ```text
 * root = diameter ÷ coefficient
 * tex = root × root × gramsPerCubicCentimetre
 * ```
 * @units centimetres; coefficient of the rule; grams per cubic centimetre → tex
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-tf
 * @example texFromDiameter({ diameter: 0.02664, coefficient: 0.00444, gramsPerCubicCentimetre: 1.5 }) // 54
 */
export const texFromDiameter: Calculation<TexFromDiameterInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "texFromDiameter",
  inputs: {
    diameter: plainNumber("centimetres", "across the yarn, taken as round"),
    coefficient: drawnAs(plainNumber("coefficient of the rule", "0.00444 for cotton as spun"), "as given"),
    gramsPerCubicCentimetre: drawnAs(plainNumber("grams per cubic centimetre", "density of the fibre"), "as given"),
  },
  formula: `
    root = diameter ÷ coefficient
    tex = root × root × gramsPerCubicCentimetre`,
  result: plainNumber("tex", "of the yarn"),
  source: gateTextile,
}));
