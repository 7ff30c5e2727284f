import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { warpingPlan2015 } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface LongestWarpInput {
  /** Of this colour at hand. */
  readonly yarn: Length;
  /** Of this colour. */
  readonly ends: number;
}

/**
 * Longest warp that the yarn at hand allows.
 *
 * @formula warp = yarn ÷ ends
 * @units a length; ends → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source warping-plan-2015
 * @example longestWarp({ yarn: metres(47600), ends: 7 }).in(metres) // 6800
 */
export const longestWarp: Calculation<LongestWarpInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "longestWarp",
  inputs: {
    yarn: positive(Length, "of this colour at hand"),
    ends: whole("ends", "of this colour", { atLeast: 1 }),
  },
  formula: "warp = yarn ÷ ends",
  result: positive(Length, "of every end"),
  forUse: "down",
  source: warpingPlan2015,
}));
