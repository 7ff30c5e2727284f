import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Length, DentsPerLength } from "../../units/index.js";

export interface DentsForWidthInput {
  /** Of the reed. */
  readonly reed: DentsPerLength;
  /** That the dents must hold. */
  readonly widthInReed: Length;
}

/**
 * Whole dents that a width takes in a reed.
 *
 * @formula dents = roundUp(reed × widthInReed)
 * @units a reed number; a length → dents
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example dentsForWidth({ reed: scotchReed(1100), widthInReed: inches(38) }) // 1130
 */
export const dentsForWidth: Calculation<DentsForWidthInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "dentsForWidth",
  inputs: {
    reed: positive(DentsPerLength, "of the reed"),
    widthInReed: positive(Length, "that the dents must hold"),
  },
  formula: "dents = roundUp(reed × widthInReed)",
  result: whole("dents", "the last perhaps reaching past the width", { atLeast: 1 }),
  source: brooks1892,
}));
