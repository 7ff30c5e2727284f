import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { difference } from "../../engine/quantity/index.js";
import { percentAdded, percentLost } from "../../units/index.js";
import type { Length } from "../../units/index.js";
import { warpLengthByAdding } from "./warp-length-by-adding.js";
import type { WarpLengthByAddingInput } from "./warp-length-by-adding.js";
import { warpLength } from "./warp-length.js";
import type { WarpLengthInput } from "./warp-length.js";

/** A warp's length by the two rules in use, for one set of percentages. */
export interface WarpLengthByBothRules {
  /** The percentages divided out one after the other, as losses are. */
  readonly dividing: Length;
  /** The same figures added together and to the cut length, as many pages do. */
  readonly adding: Length;
  /** Dividing less adding: what the pieces would lack. */
  readonly difference: Length;
  readonly steps: readonly [ReportStep<WarpLengthInput>, ReportStep<WarpLengthByAddingInput>];
}

/**
 * The length of a warp by the dividing rule and by the adding rule beside it, to see why two sheets disagree.
 *
 * @param input as for `warpLength`; the adding rule takes the same figures for percentages of the cut length
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source cnch-2016 for dividing; horsens-vaevekreds for adding
 * @example
 * const input = { pieces: 8, finishedLength: inches(21), hemEachEnd: inches(1), loomToFinished: percentLost(10), takeUp: percentLost(8), loomWaste: inches(30) };
 * warpLengthByBothRules(input).adding.in(inches) // 247.12
 */
export function warpLengthByBothRules(input: WarpLengthInput): WarpLengthByBothRules {
  const dividing = warpLength(input);
  const { loomToFinished, takeUp, ...others } = input;
  const byAdding = {
    ...others,
    shrinkage: percentAdded(loomToFinished.in(percentLost)),
    takeUp: percentAdded(takeUp.in(percentLost)),
  };
  const adding = warpLengthByAdding(byAdding);
  return frozen({
    dividing,
    adding,
    difference: difference(dividing, adding),
    steps: [
      { calculation: warpLength, input },
      { calculation: warpLengthByAdding, input: byAdding },
    ] as const,
  });
}
