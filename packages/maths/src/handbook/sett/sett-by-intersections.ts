import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { DiametersPerLength, EndsPerLength, endsPerCentimetre, endsPerInch } from "../../units/index.js";

export interface SettByIntersectionsInput {
  /** Laid touching. */
  readonly diameters: DiametersPerLength;
  /** Warp ends. */
  readonly ends: number;
  /** Where a pick passes between face and back. */
  readonly intersections: number;
}

/**
 * Closest sett for a weave, from the diameters in a length, each intersection taking the room of an end.
 *
 * @formula sett = diameters × ends ÷ (ends + intersections)
 * @units diameters in a length; ends in one weave repeat; intersections in one weave repeat → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example settByIntersections({ diameters: diametersPerInch(135), ends: 3, intersections: 2 }).in(endsPerInch) // 81
 */
export const settByIntersections: Calculation<SettByIntersectionsInput, EndsPerLength> = /* @__PURE__ */ calculation(
  () => ({
    name: "settByIntersections",
    inputs: {
      diameters: positive(DiametersPerLength, "laid touching"),
      ends: drawnAs(whole("ends in one weave repeat", "warp ends", { atLeast: 1 }), "as given"),
      intersections: drawnAs(
        whole("intersections in one weave repeat", "where a pick passes between face and back", {
          atLeast: 1,
        }),
        "as given",
      ),
    },
    formula: "sett = diameters × ends ÷ (ends + intersections)",
    result: positive(EndsPerLength, "at the closest"),
    resultIn: [endsPerInch, endsPerCentimetre],
    source: taylor1909,
  }),
);
