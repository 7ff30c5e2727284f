import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { ashenhurstCurvature } from "../../sources/index.js";
import { DiametersPerLength, EndsPerLength, endsPerCentimetre, endsPerInch } from "../../units/index.js";

export interface SettByCurvatureInput {
  /** Laid touching. */
  readonly diameters: DiametersPerLength;
  /** Warp ends. */
  readonly ends: number;
  /** Where a pick passes between face and back. */
  readonly intersections: number;
}

/**
 * Closest sett for a weave, from the diameters in a length, the weft bending round the ends; a rule recalled, not read.
 *
 * In plain weave it is the jammed square cloth of Peirce, which was read.
 *
 * @formula
 * ```text
 * room = ends + intersections × (√3 − 1)
 * sett = diameters × ends ÷ room
 * ```
 * @units diameters in a length; ends in one weave repeat; intersections in one weave repeat → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source ashenhurst-curvature
 * @example settByCurvature({ diameters: diametersPerInch(52), ends: 2, intersections: 2 }).in(endsPerInch) // 30.022…
 */
export const settByCurvature: Calculation<SettByCurvatureInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settByCurvature",
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
  formula: `
    room = ends + intersections × (√3 − 1)
    sett = diameters × ends ÷ room`,
  result: positive(EndsPerLength, "at the closest"),
  resultIn: [endsPerInch, endsPerCentimetre],
  source: ashenhurstCurvature,
}));
