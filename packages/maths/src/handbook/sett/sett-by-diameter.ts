import { calculation, drawnAs, plainNumber, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";

export interface SettByDiameterInput {
  /** For the material, as the book gives it. */
  readonly constant: number;
  /** Of the yarn as woven. */
  readonly yardsPerPound: number;
  /** Warp ends. */
  readonly ends: number;
  /** Where the weft passes between face and back. */
  readonly intersections: number;
}

/**
 * Closest ends per inch of a weave, from threads that lie touching; a rule of thumb for square cloths of one yarn.
 *
 * Its constant is found by trial and differs from book to book: 0.95 for cotton in Taylor, 0.9 in others.
 *
 * @formula
 * ```text
 * diametersPerInch = constant × √yardsPerPound
 * endsPerInch      = diametersPerInch × ends ÷ (ends + intersections)
 * ```
 * @units constant of the rule; yards per pound; ends in one weave repeat; intersections in one weave repeat → ends per inch
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example settByDiameter({ constant: 0.9, yardsPerPound: 3360, ends: 2, intersections: 2 }) // 26.08…
 */
export const settByDiameter: Calculation<SettByDiameterInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "settByDiameter",
  inputs: {
    constant: drawnAs(plainNumber("constant of the rule", "for the material, as the book gives it"), "as given"),
    yardsPerPound: plainNumber("yards per pound", "of the yarn as woven"),
    ends: drawnAs(whole("ends in one weave repeat", "warp ends", { atLeast: 1 }), "as given"),
    intersections: drawnAs(
      whole("intersections in one weave repeat", "where the weft passes between face and back", {
        atLeast: 1,
      }),
      "as given",
    ),
  },
  formula: `
    diametersPerInch = constant × √yardsPerPound
    endsPerInch      = diametersPerInch × ends ÷ (ends + intersections)`,
  result: plainNumber("ends per inch", "at the closest"),
  source: taylor1909,
}));
