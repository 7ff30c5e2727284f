import { calculation, drawnAs, plainNumber, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { curvatureRecalled } from "../../sources/index.js";

export interface SettByCurvatureInput {
  /** Laid touching in the length. */
  readonly diameters: number;
  /** Warp ends. */
  readonly ends: number;
  /** Where a pick passes between face and back. */
  readonly intersections: number;
}

/**
 * Closest ends in a length for a weave, from the diameters in that length, the weft bending round the ends; a rule recalled, not read.
 *
 * In plain weave it is the jammed square cloth of Peirce, which was read.
 *
 * @formula
 * ```text
 * room = ends + intersections × (√3 − 1)
 * sett = diameters × ends ÷ room
 * ```
 * @units diameters; ends in one weave repeat; intersections in one weave repeat → ends
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source ashenhurst-curvature
 * @example settByCurvature({ diameters: 52, ends: 2, intersections: 2 }) // 30.022…
 */
export const settByCurvature: Calculation<SettByCurvatureInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "settByCurvature",
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
  formula: `
    room = ends + intersections × (√3 − 1)
    sett = diameters × ends ÷ room`,
  result: plainNumber("ends", "in the same length, at the closest"),
  source: curvatureRecalled,
}));
