import { calculation, plainNumber, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { fry2024 } from "../../sources/index.js";
import { Money } from "../../units/index.js";

export interface WorkCostInput {
  /** Of all the work, the finishing with it. */
  readonly hours: number;
  /** For an hour. */
  readonly hourlyRate: Money;
}

/**
 * Cost of the hours worked: winding, tying, weaving, washing, hemming.
 *
 * @formula cost = hours × hourlyRate
 * @units hours; money → money
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source fry-2024
 * @example workCost({ hours: 10, hourlyRate: currency("USD")(15) }).toString() // "150 USD"
 */
export const workCost: Calculation<WorkCostInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "workCost",
  inputs: {
    hours: plainNumber("hours", "of all the work, the finishing with it"),
    hourlyRate: positive(Money, "for an hour"),
  },
  formula: "cost = hours × hourlyRate",
  result: positive(Money, "for the work"),
  resultIn: "hourlyRate",
  forUse: "up",
  source: fry2024,
}));
