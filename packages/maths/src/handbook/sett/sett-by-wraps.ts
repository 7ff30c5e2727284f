import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { osterkampAshenhurst } from "../../sources/index.js";
import { EndsPerLength, Length, endsPerCentimetre, endsPerInch } from "../../units/index.js";

export interface SettByWrapsInput {
  /** Of the yarn, touching. */
  readonly wraps: number;
  /** Of the ruler they cover. */
  readonly width: Length;
  /** Warp ends. */
  readonly ends: number;
  /** Where the weft passes between face and back. */
  readonly intersections: number;
}

/**
 * Ends in a length of a weave, from the yarn wrapped side by side round a ruler; a rule of thumb.
 *
 * Wrapping by hand counts only about 0.7 of the diameters that the rule of diameters gives, so the two are never mixed.
 *
 * @formula sett = wraps ÷ width × ends ÷ (ends + intersections)
 * @units wraps; a length; ends in one weave repeat; intersections in one weave repeat → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source osterkamp-ashenhurst
 * @example settByWraps({ wraps: 20, width: inches(2), ends: 2, intersections: 2 }).in(endsPerInch) // 5
 */
export const settByWraps: Calculation<SettByWrapsInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settByWraps",
  inputs: {
    wraps: whole("wraps", "of the yarn, touching", { atLeast: 1 }),
    width: positive(Length, "of the ruler they cover"),
    ends: drawnAs(whole("ends in one weave repeat", "warp ends", { atLeast: 1 }), "as given"),
    intersections: drawnAs(
      whole("intersections in one weave repeat", "where the weft passes between face and back", {
        atLeast: 1,
      }),
      "as given",
    ),
  },
  formula: "sett = wraps ÷ width × ends ÷ (ends + intersections)",
  result: positive(EndsPerLength, "by the wraps"),
  resultIn: [endsPerInch, endsPerCentimetre],
  source: osterkampAshenhurst,
}));
