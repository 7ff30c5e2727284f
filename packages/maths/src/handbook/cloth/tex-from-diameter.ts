import { calculation, drawnAs, plainNumber, positive, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Density, DirectCount, Length, centimetres, gramsPerCubicCentimetre, tex } from "../../units/index.js";

export interface TexFromDiameterInput {
  /** Across the yarn, taken as round. */
  readonly diameter: Length;
  /** 0.00444 for cotton as spun. */
  readonly coefficient: number;
  /** Of the fibre. */
  readonly density: Density;
}

/**
 * Tex of a yarn from its diameter, by a coefficient, for centimetres and tex, that holds how closely its fibres are packed.
 *
 * @formula
 * ```text
 * root = diameter ÷ coefficient
 * count = root × root × density
 * ```
 * @units a length, reckoned in centimetres; coefficient of the rule; a density, reckoned in grams per cubic centimetre → a direct count, reckoned in tex
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example texFromDiameter({ diameter: millimetres("0.2664"), coefficient: 0.00444, density: gramsPerCubicCentimetre("1.5") }).in(tex) // 54
 */
export const texFromDiameter: Calculation<TexFromDiameterInput, DirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "texFromDiameter",
  inputs: {
    diameter: reckonedIn(positive(Length, "across the yarn, taken as round"), [centimetres]),
    coefficient: drawnAs(plainNumber("coefficient of the rule", "0.00444 for cotton as spun"), "as given"),
    density: reckonedIn(drawnAs(positive(Density, "of the fibre"), "as given"), [gramsPerCubicCentimetre]),
  },
  formula: `
    root = diameter ÷ coefficient
    count = root × root × density`,
  result: reckonedIn(positive(DirectCount, "of the yarn"), [tex]),
  source: gateTextile,
}));
