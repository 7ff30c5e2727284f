import { calculation, listOf, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";

export interface BreaksBetweenInput {
  /** Of each kind that is woven, header and sample too. */
  readonly entries: readonly number[];
}

/**
 * Breaks woven between the pieces of a warp: one fewer than there are pieces, header and sample counted as pieces.
 *
 * @formula breaks = orNothing(Σentries − 1)
 * @units a list, each entries → breaks
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example breaksBetween({ entries: [1, 6, 3] }) // 9
 */
export const breaksBetween: Calculation<BreaksBetweenInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "breaksBetween",
  inputs: {
    entries: listOf(whole("entries", "of each kind that is woven, header and sample too", { atLeast: 0 })),
  },
  formula: "breaks = orNothing(Σentries − 1)",
  result: whole("breaks", "between two that are woven", { atLeast: 0 }),
  source: commonPractice,
}));
