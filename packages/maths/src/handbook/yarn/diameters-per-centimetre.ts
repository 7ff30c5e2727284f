import { calculation, drawnAs, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { sweetGeorgia } from "../../sources/index.js";

export interface DiametersPerCentimetreInput {
  /** For inches and yards per pound, as the book gives it. */
  readonly constant: number;
  /** Of the yarn. */
  readonly metresPerKilogram: number;
}

/**
 * Threads that lie side by side, touching, in one centimetre, by a constant given for inches; a rule of thumb.
 *
 * @formula
 * ```text
 * yardsPerPound = metresPerKilogram × 0.45359237 ÷ 0.9144
 * diameters     = constant × √yardsPerPound ÷ 2.54
 * ```
 * @units constant of the rule; metres per kilogram → diameters per centimetre
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source sweet-georgia
 * @example diametersPerCentimetre({ constant: 0.9, metresPerKilogram: 6773 }) // 20.538…
 */
export const diametersPerCentimetre: Calculation<DiametersPerCentimetreInput, number> = /* @__PURE__ */ calculation(
  () => ({
    name: "diametersPerCentimetre",
    inputs: {
      constant: drawnAs(
        plainNumber("constant of the rule", "for inches and yards per pound, as the book gives it"),
        "as given",
      ),
      metresPerKilogram: plainNumber("metres per kilogram", "of the yarn"),
    },
    formula: `
    yardsPerPound = metresPerKilogram × 0.45359237 ÷ 0.9144
    diameters     = constant × √yardsPerPound ÷ 2.54`,
    result: plainNumber("diameters per centimetre", "laid touching"),
    source: sweetGeorgia,
  }),
);
