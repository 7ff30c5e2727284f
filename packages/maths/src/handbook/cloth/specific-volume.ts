import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Length, MassPerArea, VolumePerMass, cubicCentimetresPerGram } from "../../units/index.js";

export interface SpecificVolumeInput {
  /** Through the cloth. */
  readonly thickness: Length;
  /** Of the cloth. */
  readonly massPerArea: MassPerArea;
}

/**
 * Room that a mass of the cloth takes up.
 *
 * @formula volume = thickness ÷ massPerArea
 * @units a length; a mass per area → a volume per mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example specificVolume({ thickness: millimetres("0.5"), massPerArea: gramsPerSquareMetre(125) }).in(cubicCentimetresPerGram) // 4
 */
export const specificVolume: Calculation<SpecificVolumeInput, VolumePerMass> = /* @__PURE__ */ calculation(() => ({
  name: "specificVolume",
  inputs: {
    thickness: positive(Length, "through the cloth"),
    massPerArea: positive(MassPerArea, "of the cloth"),
  },
  formula: "volume = thickness ÷ massPerArea",
  result: positive(VolumePerMass, "of the cloth"),
  resultIn: [cubicCentimetresPerGram],
  source: gateTextile,
}));
