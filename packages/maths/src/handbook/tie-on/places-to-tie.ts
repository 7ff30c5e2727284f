import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";

export interface PlacesToTieInput {
  /** Of the old warp. */
  readonly places: number;
  /** Broken, and not mended. */
  readonly leftEmpty: number;
  /** Left out in the old warp, and put in now. */
  readonly mended: number;
}

/**
 * Places that take a new end: those of the old warp, less the ones left empty, more the left-out ones that are put in.
 *
 * @formula toTie = places − leftEmpty + mended
 * @units places → places
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example placesToTie({ places: 370, leftEmpty: 2, mended: 1 }) // 369
 */
export const placesToTie: Calculation<PlacesToTieInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "placesToTie",
  inputs: {
    places: whole("places", "of the old warp", { atLeast: 0 }),
    leftEmpty: whole("places", "broken, and not mended", { atLeast: 0 }),
    mended: whole("places", "left out in the old warp, and put in now", { atLeast: 0 }),
  },
  formula: "toTie = places − leftEmpty + mended",
  result: whole("places", "that take a new end", { atLeast: 0 }),
  source: commonPractice,
}));
