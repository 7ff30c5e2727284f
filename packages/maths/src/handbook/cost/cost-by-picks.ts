import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Money } from "../../units/index.js";

export interface CostByPicksInput {
  /** Woven in all, faulty ones as agreed. */
  readonly picks: number;
  /** For so many picks. */
  readonly charge: Money;
  /** That the charge is for. */
  readonly picksCharged: number;
}

/**
 * Cost of weaving paid by the pick: so much for every hundred, thousand or hundred thousand of them.
 *
 * @formula cost = picks ÷ picksCharged × charge
 * @units picks; money → money
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example costByPicks({ picks: 82944, charge: currency("pence")(3), picksCharged: 10000 }).toString() // "24.8832 pence"
 */
export const costByPicks: Calculation<CostByPicksInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "costByPicks",
  inputs: {
    picks: whole("picks", "woven in all, faulty ones as agreed", { atLeast: 1 }),
    charge: positive(Money, "for so many picks"),
    picksCharged: whole("picks", "that the charge is for", { atLeast: 1 }),
  },
  formula: "cost = picks ÷ picksCharged × charge",
  result: positive(Money, "for the picks"),
  resultIn: "charge",
  forUse: "up",
  source: commonPractice,
}));
