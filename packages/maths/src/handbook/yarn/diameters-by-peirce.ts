import { calculation, positive, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { DiametersPerLength, IndirectCount, cottonCount, diametersPerInch } from "../../units/index.js";

export interface DiametersByPeirceInput {
  /** Of the finished thread. */
  readonly count: IndirectCount;
}

/**
 * Threads that lie side by side, touching, in a length, by the rule of Peirce for cotton.
 *
 * @formula diameters = 28 × √count
 * @units an indirect count, reckoned in cotton count → diameters in a length, reckoned in diameters per inch
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example diametersByPeirce({ count: cottonCount(36) }).in(diametersPerInch) // 168
 */
export const diametersByPeirce: Calculation<DiametersByPeirceInput, DiametersPerLength> = /* @__PURE__ */ calculation(
  () => ({
    name: "diametersByPeirce",
    inputs: {
      count: reckonedIn(positive(IndirectCount, "of the finished thread"), [cottonCount]),
    },
    formula: "diameters = 28 × √count",
    result: reckonedIn(positive(DiametersPerLength, "laid touching"), [diametersPerInch]),
    source: gateTextile,
  }),
);
