import { calculation, drawnAs, plainNumber, positive, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { DiametersPerLength, IndirectCount, diametersPerInch, yardsPerPound } from "../../units/index.js";

export interface DiametersByConstantInput {
  /** For the material, as the book gives it. */
  readonly constant: number;
  /** Of the yarn. */
  readonly count: IndirectCount;
}

/**
 * Threads that lie side by side, touching, in a length, by a constant for inches and yards per pound; a rule of thumb.
 *
 * @formula diameters = constant × √count
 * @units constant of the rule; an indirect count, reckoned in yards per pound → diameters in a length, reckoned in diameters per inch
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example diametersByConstant({ constant: 0.95, count: cottonCount(32) }).in(diametersPerInch) // 155.75…
 */
export const diametersByConstant: Calculation<DiametersByConstantInput, DiametersPerLength> =
  /* @__PURE__ */ calculation(() => ({
    name: "diametersByConstant",
    inputs: {
      constant: drawnAs(plainNumber("constant of the rule", "for the material, as the book gives it"), "as given"),
      count: reckonedIn(positive(IndirectCount, "of the yarn"), [yardsPerPound]),
    },
    formula: "diameters = constant × √count",
    result: reckonedIn(positive(DiametersPerLength, "laid touching"), [diametersPerInch]),
    source: taylor1909,
  }));
