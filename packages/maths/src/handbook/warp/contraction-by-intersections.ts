import { calculation, drawnAs, partsToo, plainNumber, positive, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount, Length, cottonCount, inches } from "../../units/index.js";

export interface ContractionByIntersectionsInput {
  /** Of an end with the weft. */
  readonly intersections: number;
  /** Of the cloth in which they are counted. */
  readonly length: Length;
  /** Of the rule, 4 or 3. */
  readonly multiplier: number;
  /** Of the weft. */
  readonly weftCount: IndirectCount;
}

/**
 * Contraction of the warp in weaving, in percent, from the intersections of the weave; a rule of thumb of the mill.
 * The book takes 4 for the multiplier, 3 in middling cloths; it does not say of which length the percentage is.
 *
 * @formula contraction = intersections ÷ length × multiplier ÷ weftCount
 * @units intersections; a length, reckoned in inches; multiplier; an indirect count, reckoned in cotton count → percent
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example contractionByIntersections({ intersections: 120, length: inches(1), multiplier: 4, weftCount: cottonCount(70) }) // 6.857…
 */
export const contractionByIntersections: Calculation<ContractionByIntersectionsInput, number> =
  /* @__PURE__ */ calculation(() => ({
    name: "contractionByIntersections",
    inputs: {
      intersections: partsToo("intersections", "of an end with the weft"),
      length: reckonedIn(positive(Length, "of the cloth in which they are counted"), [inches]),
      multiplier: drawnAs(plainNumber("multiplier", "of the rule, 4 or 3"), "as given"),
      weftCount: reckonedIn(positive(IndirectCount, "of the weft"), [cottonCount]),
    },
    formula: "contraction = intersections ÷ length × multiplier ÷ weftCount",
    result: plainNumber("percent", "of the length"),
    source: taylor1909,
  }));
