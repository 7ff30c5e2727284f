import { calculation, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";

export interface SpecificVolumeInput {
  /** Through the cloth. */
  readonly thicknessInCentimetres: number;
  /** Of the cloth. */
  readonly gramsPerSquareMetre: number;
}

/**
 * Room that a gram of the cloth takes up, in cubic centimetres.
 *
 * @formula volume = thicknessInCentimetres × 10000 ÷ gramsPerSquareMetre
 * @units centimetres; grams per square metre → cubic centimetres per gram
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-tf
 * @example specificVolume({ thicknessInCentimetres: 0.05, gramsPerSquareMetre: 125 }) // 4
 */
export const specificVolume: Calculation<SpecificVolumeInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "specificVolume",
  inputs: {
    thicknessInCentimetres: plainNumber("centimetres", "through the cloth"),
    gramsPerSquareMetre: plainNumber("grams per square metre", "of the cloth"),
  },
  formula: "volume = thicknessInCentimetres × 10000 ÷ gramsPerSquareMetre",
  result: plainNumber("cubic centimetres per gram", "of the cloth"),
  source: gateTextile,
}));
