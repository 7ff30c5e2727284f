import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { weaveSpinDance2012 } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface ExtraYarnOfTurnInput {
  /** In the warp. */
  readonly ends: number;
  /** In the length of every end. */
  readonly turns: number;
  /** Of one turn, with the yarn on its path. */
  readonly measuredTurn: Length;
  /** Of one turn, as reckoned. */
  readonly nominalTurn: Length;
}

/**
 * Yarn used beyond the plan when a turn is longer than its nominal length.
 *
 * @formula
 * ```text
 * each  = turns × (measuredTurn − nominalTurn)
 * extra = ends × each
 * ```
 * @units ends; turns; a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source weave-spin-dance-2012
 * @example extraYarnOfTurn({ ends: 577, turns: 1, measuredTurn: inches(80), nominalTurn: yards(2) }).in(inches) // 4616
 */
export const extraYarnOfTurn: Calculation<ExtraYarnOfTurnInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "extraYarnOfTurn",
  inputs: {
    ends: whole("ends", "in the warp", { atLeast: 1 }),
    turns: whole("turns", "in the length of every end", { atLeast: 1 }),
    measuredTurn: positive(Length, "of one turn, with the yarn on its path"),
    nominalTurn: positive(Length, "of one turn, as reckoned"),
  },
  formula: `
    each  = turns × (measuredTurn − nominalTurn)
    extra = ends × each`,
  result: atLeastZero(Length, "of yarn"),
  forUse: "up",
  source: weaveSpinDance2012,
}));
