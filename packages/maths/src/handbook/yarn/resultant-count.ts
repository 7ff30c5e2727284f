import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";

export interface ResultantCountInput {
  /** Of the single thread. */
  readonly count: IndirectCount;
  /** Folded together. */
  readonly plies: number;
}

/**
 * Count of a yarn folded from so many equal singles, with no twist contraction.
 *
 * @formula resultant = count ÷ plies
 * @units an indirect count; plies → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example resultantCount({ count: cottonCount(8), plies: 2 }).in(yardsPerPound) // 3360
 */
export const resultantCount: Calculation<ResultantCountInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "resultantCount",
  inputs: {
    count: positive(IndirectCount, "of the single thread"),
    plies: drawnAs(whole("plies", "folded together", { atLeast: 1 }), [2, 3, 4]),
  },
  formula: "resultant = count ÷ plies",
  result: positive(IndirectCount, "of the finished thread"),
  resultIn: "count",
  source: taylor1909,
}));
