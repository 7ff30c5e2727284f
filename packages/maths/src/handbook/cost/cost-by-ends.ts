import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Money } from "../../units/index.js";

export interface CostByEndsInput {
  /** Warped or joined; a double end joined by one knot is one. */
  readonly ends: number;
  /** For so many ends. */
  readonly charge: Money;
  /** That the charge is for. */
  readonly endsCharged: number;
}

/**
 * Cost of work that is paid by the hundred or the thousand ends, as warping, drawing in and joining are.
 *
 * @formula cost = ends ÷ endsCharged × charge
 * @units ends; money → money
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source wolfensberger-1921
 * @example costByEnds({ ends: 4032, charge: currency("USD")("0.03"), endsCharged: 100 }).toString() // "1.2096 USD"
 */
export const costByEnds: Calculation<CostByEndsInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "costByEnds",
  inputs: {
    ends: whole("ends", "warped or joined; a double end joined by one knot is one", { atLeast: 1 }),
    charge: positive(Money, "for so many ends"),
    endsCharged: whole("ends", "that the charge is for", { atLeast: 1 }),
  },
  formula: "cost = ends ÷ endsCharged × charge",
  result: positive(Money, "for the ends"),
  resultIn: "charge",
  forUse: "up",
  source: wolfensberger1921,
}));
