import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";

export interface DentsForEndsInput {
  /** In the reed. */
  readonly ends: number;
  /** The same in every dent. */
  readonly endsPerDent: number;
}

/**
 * Dents that so many ends need; the last may be part filled.
 *
 * @formula dents = roundUp(ends ÷ endsPerDent)
 * @units ends; ends in each dent → dents
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example dentsForEnds({ ends: 406, endsPerDent: 3 }) // 136
 */
export const dentsForEnds: Calculation<DentsForEndsInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "dentsForEnds",
  inputs: {
    ends: whole("ends", "in the reed", { atLeast: 1 }),
    endsPerDent: whole("ends in each dent", "the same in every dent", { atLeast: 1 }),
  },
  formula: "dents = roundUp(ends ÷ endsPerDent)",
  result: whole("dents", "the last perhaps part filled", { atLeast: 1 }),
  source: taylor1909,
}));
