import { calculation, drawnAs, plainNumber, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";

export interface SettByIntersectionsInput {
  /** Laid touching in the length. */
  readonly diameters: number;
  /** Warp ends. */
  readonly ends: number;
  /** Where a pick passes between face and back. */
  readonly intersections: number;
}

/**
 * Closest ends in a length for a weave, from the diameters in that length, each intersection taking the room of an end.
 *
 * @formula sett = diameters × ends ÷ (ends + intersections)
 * @units diameters; ends in one weave repeat; intersections in one weave repeat → ends
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example settByIntersections({ diameters: 135, ends: 3, intersections: 2 }) // 81
 */
export const settByIntersections: Calculation<SettByIntersectionsInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "settByIntersections",
  inputs: {
    diameters: plainNumber("diameters", "laid touching in the length"),
    ends: drawnAs(whole("ends in one weave repeat", "warp ends", { atLeast: 1 }), "as given"),
    intersections: drawnAs(
      whole("intersections in one weave repeat", "where a pick passes between face and back", {
        atLeast: 1,
      }),
      "as given",
    ),
  },
  formula: "sett = diameters × ends ÷ (ends + intersections)",
  result: plainNumber("ends", "in the same length, at the closest"),
  source: taylor1909,
}));
