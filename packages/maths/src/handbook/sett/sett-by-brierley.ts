import { calculation, drawnAs, plainNumber, positive, reckonedIn, unitFor } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { gateTextile } from "../../sources/index.js";
import { EndsPerLength, IndirectCount, endsPerInch } from "../../units/index.js";

export interface SettByBrierleyInput {
  /** 1 in plain weave, else from the average float. */
  readonly floatFactor: number;
  /** 200 for the cotton count. */
  readonly constant: number;
  /** For which the constant holds. */
  readonly system: Unit<"length per mass">;
  /** Of the yarn, in any system. */
  readonly count: IndirectCount;
}

/**
 * Closest sett of a square cloth by the rule that Brierley found by trial, its constant under the root with the count.
 * The constant belongs to a system of counts, which is therefore named with it.
 *
 * @formula sett = floatFactor × √(constant × count)
 * @units float factor; constant of the rule; a unit for an indirect count; an indirect count, reckoned in the system → a sett, reckoned in ends per inch
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example settByBrierley({ floatFactor: 1, constant: 200, system: cottonCount, count: cottonCount(8) }).in(endsPerInch) // 40
 */
export const settByBrierley: Calculation<SettByBrierleyInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settByBrierley",
  inputs: {
    floatFactor: drawnAs(plainNumber("float factor", "1 in plain weave, else from the average float"), "as given"),
    constant: drawnAs(plainNumber("constant of the rule", "200 for the cotton count"), "as given"),
    system: unitFor(IndirectCount, "for which the constant holds"),
    count: reckonedIn(positive(IndirectCount, "of the yarn, in any system"), "system"),
  },
  formula: "sett = floatFactor × √(constant × count)",
  result: reckonedIn(positive(EndsPerLength, "at the closest"), [endsPerInch]),
  source: gateTextile,
  slips: [{ says: "leaves the constant outside the root", instead: "sett = floatFactor × constant × √count" }],
}));
