import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { allFiberArts } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WidthInReedByAddingInput {
  /** Washed and pressed. */
  readonly finishedWidth: Length;
  /** To the finished width, for weaving and washing. */
  readonly allowance: Addition;
}

/**
 * Width in the reed as many pages reckon it, a percentage of the finished width added; narrower than the dividing rule gives.
 *
 * @formula widthInReed = finishedWidth × (1 + allowance)
 * @units a length; a percentage added → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source all-fiber-arts
 * @example widthInReedByAdding({ finishedWidth: inches(17), allowance: percentAdded(15) }).in(inches) // 19.55
 */
export const widthInReedByAdding: Calculation<WidthInReedByAddingInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "widthInReedByAdding",
  inputs: {
    finishedWidth: positive(Length, "washed and pressed"),
    allowance: added("to the finished width, for weaving and washing"),
  },
  formula: "widthInReed = finishedWidth × (1 + allowance)",
  result: positive(Length, "from the first end to the last"),
  forUse: "up",
  source: allFiberArts,
}));
