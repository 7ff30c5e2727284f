import { calculation, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";

export interface DiameterByPeirceInput {
  /** Of the finished thread. */
  readonly cottonCount: number;
}

/**
 * Diameter of a thread in millimetres by the rule of Peirce for cotton.
 *
 * @formula diameter = 25.4 ÷ (28 × √cottonCount)
 * @units cotton count → millimetres
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-tf
 * @example diameterByPeirce({ cottonCount: 4 }) // 0.45357…
 */
export const diameterByPeirce: Calculation<DiameterByPeirceInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "diameterByPeirce",
  inputs: {
    cottonCount: plainNumber("cotton count", "of the finished thread"),
  },
  formula: "diameter = 25.4 ÷ (28 × √cottonCount)",
  result: plainNumber("millimetres", "across the thread, taken as round"),
  source: gateTextile,
}));
