import { calculation, drawnAs, plainNumber, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { coverFactor } from "../../sources/index.js";
import type { Share } from "../../units/index.js";

export interface YarnDiameterInput {
  /** Of the yarn. */
  readonly tex: number;
  /** Density of the fibre. */
  readonly gramsPerCubicCentimetre: number;
  /** Of the room of the yarn, filled with fibre; all of it in a solid rod. */
  readonly packing: Share;
}

/**
 * Diameter of a yarn in millimetres, taken as a round rod of fibre and air.
 *
 * @formula
 * ```text
 * area     = tex ÷ (1000 × gramsPerCubicCentimetre × packing)
 * diameter = √(4 × area ÷ 3.14159265358979323846)
 * ```
 * @units tex; grams per cubic centimetre; a share in percent → millimetres
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cover-factor
 * @example yarnDiameter({ tex: 30, gramsPerCubicCentimetre: 1.14, packing: percentOf(100) }) // 0.18304…
 */
export const yarnDiameter: Calculation<YarnDiameterInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "yarnDiameter",
  inputs: {
    tex: plainNumber("tex", "of the yarn"),
    gramsPerCubicCentimetre: drawnAs(plainNumber("grams per cubic centimetre", "density of the fibre"), "as given"),
    packing: drawnAs(share("of the room of the yarn, filled with fibre; all of it in a solid rod"), "as given"),
  },
  formula: `
    area     = tex ÷ (1000 × gramsPerCubicCentimetre × packing)
    diameter = √(4 × area ÷ 3.14159265358979323846)`,
  result: plainNumber("millimetres", "across the yarn, taken as round"),
  source: coverFactor,
}));
