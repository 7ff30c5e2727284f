import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { sunnano } from "../../sources/index.js";

export interface EndsWithSelvedgesInput {
  /** Between the selvedges. */
  readonly bodyEnds: number;
  /** More at each side, a doubled end being two. */
  readonly endsEachSelvedge: number;
  /** At both sides together that pass no heddle. */
  readonly floatingEnds: number;
}

/**
 * Ends to wind: the body, the selvedge at each side, and the floating ends that pass no heddle.
 *
 * @formula ends = bodyEnds + 2 × endsEachSelvedge + floatingEnds
 * @units ends → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source sunnano
 * @example endsWithSelvedges({ bodyEnds: 246, endsEachSelvedge: 2, floatingEnds: 0 }) // 250
 */
export const endsWithSelvedges: Calculation<EndsWithSelvedgesInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsWithSelvedges",
  inputs: {
    bodyEnds: whole("ends", "between the selvedges", { atLeast: 1 }),
    endsEachSelvedge: whole("ends", "more at each side, a doubled end being two", { atLeast: 0 }),
    floatingEnds: whole("ends", "at both sides together that pass no heddle", { atLeast: 0 }),
  },
  formula: "ends = bodyEnds + 2 × endsEachSelvedge + floatingEnds",
  result: whole("ends", "to wind", { atLeast: 1 }),
  source: sunnano,
}));
