import { calculation, drawnAs, plainNumber, positive, reckonedIn, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, IndirectCount, endsPerInch, yardsPerPound } from "../../units/index.js";

export interface SettByDiameterInput {
  /** For the material, as the book gives it. */
  readonly constant: number;
  /** Of the yarn as woven. */
  readonly count: IndirectCount;
  /** Warp ends. */
  readonly ends: number;
  /** Where the weft passes between face and back. */
  readonly intersections: number;
}

/**
 * Closest sett of a weave, from threads that lie touching; a rule of thumb for square cloths of one yarn.
 *
 * Its constant is found by trial and differs from book to book: 0.95 for cotton in Taylor, 0.9 in others.
 *
 * @formula
 * ```text
 * diameters = constant × √count
 * sett      = diameters × ends ÷ (ends + intersections)
 * ```
 * @units constant of the rule; an indirect count, reckoned in yards per pound; ends in one weave repeat; intersections in one weave repeat → a sett, reckoned in ends per inch
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example settByDiameter({ constant: 0.9, count: cottonCount(4), ends: 2, intersections: 2 }).in(endsPerInch) // 26.08…
 */
export const settByDiameter: Calculation<SettByDiameterInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settByDiameter",
  inputs: {
    constant: drawnAs(plainNumber("constant of the rule", "for the material, as the book gives it"), "as given"),
    count: reckonedIn(positive(IndirectCount, "of the yarn as woven"), [yardsPerPound]),
    ends: drawnAs(whole("ends in one weave repeat", "warp ends", { atLeast: 1 }), "as given"),
    intersections: drawnAs(
      whole("intersections in one weave repeat", "where the weft passes between face and back", {
        atLeast: 1,
      }),
      "as given",
    ),
  },
  formula: `
    diameters = constant × √count
    sett      = diameters × ends ÷ (ends + intersections)`,
  result: reckonedIn(positive(EndsPerLength, "at the closest"), [endsPerInch]),
  source: taylor1909,
}));
