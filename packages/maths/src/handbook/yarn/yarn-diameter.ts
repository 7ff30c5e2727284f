import { calculation, drawnAs, positive, reckonedIn, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { coverFactor } from "../../sources/index.js";
import { Density, DirectCount, Length, gramsPerCubicCentimetre, millimetres, tex } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface YarnDiameterInput {
  /** Of the yarn. */
  readonly count: DirectCount;
  /** Of the fibre. */
  readonly density: Density;
  /** Of the room of the yarn, filled with fibre; all of it in a solid rod. */
  readonly packing: Share;
}

/**
 * Diameter of a yarn, taken as a round rod of fibre and air.
 *
 * @formula
 * ```text
 * area     = count ÷ (1000 × density × packing)
 * diameter = √(4 × area ÷ 3.14159265358979323846)
 * ```
 * @units a direct count, reckoned in tex; a density, reckoned in grams per cubic centimetre; a share in percent → a length, reckoned in millimetres
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cover-factor
 * @example yarnDiameter({ count: tex(30), density: gramsPerCubicCentimetre("1.14"), packing: percentOf(100) }).in(millimetres) // 0.18304…
 */
export const yarnDiameter: Calculation<YarnDiameterInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnDiameter",
  inputs: {
    count: reckonedIn(positive(DirectCount, "of the yarn"), [tex]),
    density: reckonedIn(drawnAs(positive(Density, "of the fibre"), "as given"), [gramsPerCubicCentimetre]),
    packing: drawnAs(share("of the room of the yarn, filled with fibre; all of it in a solid rod"), "as given"),
  },
  formula: `
    area     = count ÷ (1000 × density × packing)
    diameter = √(4 × area ÷ 3.14159265358979323846)`,
  result: reckonedIn(positive(Length, "across the yarn, taken as round"), [millimetres]),
  source: coverFactor,
}));
