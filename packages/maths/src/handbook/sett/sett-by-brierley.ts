import { calculation, drawnAs, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";

export interface SettByBrierleyInput {
  /** 1 in plain weave, else from the average float. */
  readonly floatFactor: number;
  /** 200 for the cotton count. */
  readonly constant: number;
  /** In the system of the constant. */
  readonly count: number;
}

/**
 * Closest ends per inch of a square cloth by the rule that Brierley found by trial, its constant under the root with the count.
 *
 * @formula sett = floatFactor × √(constant × count)
 * @units float factor; constant of the rule; count → ends per inch
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-tf
 * @example settByBrierley({ floatFactor: 1, constant: 200, count: 8 }) // 40
 */
export const settByBrierley: Calculation<SettByBrierleyInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "settByBrierley",
  inputs: {
    floatFactor: drawnAs(plainNumber("float factor", "1 in plain weave, else from the average float"), "as given"),
    constant: drawnAs(plainNumber("constant of the rule", "200 for the cotton count"), "as given"),
    count: plainNumber("count", "in the system of the constant"),
  },
  formula: "sett = floatFactor × √(constant × count)",
  result: plainNumber("ends per inch", "at the closest"),
  source: gateTextile,
  slips: [{ says: "leaves the constant outside the root", instead: "sett = floatFactor × constant × √count" }],
}));
