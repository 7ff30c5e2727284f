import { calculation, drawnAs, plainNumber, positive, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Density, DirectCount, Length, centimetres, gramsPerCubicCentimetre, tex } from "../../units/index.js";

export interface DiameterByCoefficientInput {
  /** 0.00444 for cotton as spun. */
  readonly coefficient: number;
  /** Of the yarn. */
  readonly count: DirectCount;
  /** Of the fibre. */
  readonly density: Density;
}

/**
 * Diameter of a yarn by a coefficient, for centimetres and tex, that holds how closely its fibres are packed.
 *
 * @formula diameter = coefficient × √(count ÷ density)
 * @units coefficient of the rule; a direct count, reckoned in tex; a density, reckoned in grams per cubic centimetre → a length, reckoned in centimetres
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example diameterByCoefficient({ coefficient: 0.00444, count: tex(54), density: gramsPerCubicCentimetre("1.5") }).in(centimetres) // 0.02664
 */
export const diameterByCoefficient: Calculation<DiameterByCoefficientInput, Length> = /* @__PURE__ */ calculation(
  () => ({
    name: "diameterByCoefficient",
    inputs: {
      coefficient: drawnAs(plainNumber("coefficient of the rule", "0.00444 for cotton as spun"), "as given"),
      count: reckonedIn(positive(DirectCount, "of the yarn"), [tex]),
      density: reckonedIn(drawnAs(positive(Density, "of the fibre"), "as given"), [gramsPerCubicCentimetre]),
    },
    formula: "diameter = coefficient × √(count ÷ density)",
    result: reckonedIn(positive(Length, "across the yarn, taken as round"), [centimetres]),
    source: gateTextile,
  }),
);
