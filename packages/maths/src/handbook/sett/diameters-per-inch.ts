import { calculation, drawnAs, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";

export interface DiametersPerInchInput {
  /** For the material, as the book gives it. */
  readonly constant: number;
  /** Of the yarn. */
  readonly yardsPerPound: number;
}

/**
 * Threads that lie side by side, touching, in one inch; a rule of thumb.
 *
 * @formula diameters = constant × √yardsPerPound
 * @units constant of the rule; yards per pound → diameters per inch
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example diametersPerInch({ constant: 0.95, yardsPerPound: 26880 }) // 155.75…
 */
export const diametersPerInch: Calculation<DiametersPerInchInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "diametersPerInch",
  inputs: {
    constant: drawnAs(plainNumber("constant of the rule", "for the material, as the book gives it"), "as given"),
    yardsPerPound: plainNumber("yards per pound", "of the yarn"),
  },
  formula: "diameters = constant × √yardsPerPound",
  result: plainNumber("diameters per inch", "laid touching"),
  source: taylor1909,
}));
