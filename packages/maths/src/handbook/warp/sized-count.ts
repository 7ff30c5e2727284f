import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { sizingProblems } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface SizedCountInput {
  /** Before sizing. */
  readonly count: IndirectCount;
  /** To the mass of the unsized yarn. */
  readonly size: Addition;
}

/**
 * Count of a yarn when size has made it heavier.
 *
 * @formula sized = count ÷ (1 + size)
 * @units an indirect count; a percentage added → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source sizing-problems
 * @example sizedCount({ count: cottonCount(40), size: percentAdded(25) }).in(cottonCount) // 32
 */
export const sizedCount: Calculation<SizedCountInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "sizedCount",
  inputs: {
    count: positive(IndirectCount, "before sizing"),
    size: added("to the mass of the unsized yarn"),
  },
  formula: "sized = count ÷ (1 + size)",
  result: positive(IndirectCount, "of yarn and size"),
  resultIn: "count",
  source: sizingProblems,
}));
