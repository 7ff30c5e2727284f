import { calculation, drawnAs, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";

export interface ContractionByIntersectionsInput {
  /** Of an end with the weft. */
  readonly intersectionsPerInch: number;
  /** Of the rule, 4 or 3. */
  readonly multiplier: number;
  /** Of the weft. */
  readonly weftCount: number;
}

/**
 * Contraction of the warp in weaving, in percent, from the intersections of the weave; a rule of thumb of the mill.
 * The book takes 4 for the multiplier, 3 in middling cloths; it does not say of which length the percentage is.
 *
 * @formula contraction = intersectionsPerInch × multiplier ÷ weftCount
 * @units intersections per inch; multiplier; cotton count → percent
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example contractionByIntersections({ intersectionsPerInch: 120, multiplier: 4, weftCount: 70 }) // 6.857…
 */
export const contractionByIntersections: Calculation<ContractionByIntersectionsInput, number> =
  /* @__PURE__ */ calculation(() => ({
    name: "contractionByIntersections",
    inputs: {
      intersectionsPerInch: plainNumber("intersections per inch", "of an end with the weft"),
      multiplier: drawnAs(plainNumber("multiplier", "of the rule, 4 or 3"), "as given"),
      weftCount: plainNumber("cotton count", "of the weft"),
    },
    formula: "contraction = intersectionsPerInch × multiplier ÷ weftCount",
    result: plainNumber("percent", "of the length"),
    source: taylor1909,
  }));
