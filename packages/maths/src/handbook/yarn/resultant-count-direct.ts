import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { DirectCount } from "../../units/index.js";

export interface ResultantCountDirectInput {
  /** Of the single thread. */
  readonly count: DirectCount;
  /** Folded together. */
  readonly plies: number;
}

/**
 * Direct count of a yarn folded from so many equal singles, with no twist contraction.
 *
 * @formula resultant = count × plies
 * @units a direct count; plies → a direct count
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example resultantCountDirect({ count: tex(30), plies: 2 }).in(tex) // 60
 */
export const resultantCountDirect: Calculation<ResultantCountDirectInput, DirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "resultantCountDirect",
    inputs: {
      count: positive(DirectCount, "of the single thread"),
      plies: drawnAs(whole("plies", "folded together", { atLeast: 1 }), [2, 3, 4]),
    },
    formula: "resultant = count × plies",
    result: positive(DirectCount, "of the finished thread"),
    resultIn: "count",
    source: taylor1909,
  }),
);
