import { calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount, PicksPerLength } from "../../units/index.js";

export interface PicksForCountInput {
  /** Of the cloth there is. */
  readonly picks: PicksPerLength;
  /** Of the weft in it. */
  readonly count: IndirectCount;
  /** Of the other weft. */
  readonly newCount: IndirectCount;
}

/**
 * Picks of the same cloth in another weft, just as firm: as the square root of the count.
 *
 * @formula newPicks = picks × √(newCount ÷ count)
 * @units a number of picks; an indirect count → a number of picks
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example picksForCount({ picks: picksPerInch(60), count: cottonCount(16), newCount: cottonCount(25) }).in(picksPerInch) // 75
 */
export const picksForCount: Calculation<PicksForCountInput, PicksPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "picksForCount",
  inputs: {
    picks: positive(PicksPerLength, "of the cloth there is"),
    count: positive(IndirectCount, "of the weft in it"),
    newCount: positive(IndirectCount, "of the other weft"),
  },
  formula: "newPicks = picks × √(newCount ÷ count)",
  result: positive(PicksPerLength, "of the new cloth"),
  resultIn: "picks",
  source: taylor1909,
}));
