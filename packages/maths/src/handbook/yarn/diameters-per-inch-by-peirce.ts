import { calculation, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";

export interface DiametersPerInchByPeirceInput {
  /** Of the finished thread. */
  readonly cottonCount: number;
}

/**
 * Threads that lie side by side, touching, in one inch, by the rule of Peirce for cotton.
 *
 * @formula diameters = 28 × √cottonCount
 * @units cotton count → diameters per inch
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-tf
 * @example diametersPerInchByPeirce({ cottonCount: 36 }) // 168
 */
export const diametersPerInchByPeirce: Calculation<DiametersPerInchByPeirceInput, number> = /* @__PURE__ */ calculation(
  () => ({
    name: "diametersPerInchByPeirce",
    inputs: {
      cottonCount: plainNumber("cotton count", "of the finished thread"),
    },
    formula: "diameters = 28 × √cottonCount",
    result: plainNumber("diameters per inch", "laid touching"),
    source: gateTextile,
  }),
);
