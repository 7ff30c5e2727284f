import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";

export interface OldPlacesInput {
  /** Of the old warp that are there. */
  readonly threads: number;
  /** Broken, their heddle and part of a dent still there. */
  readonly broken: number;
  /** That share the heddle of the one before. */
  readonly tooMany: number;
}

/**
 * Places for one thread each that the old warp has on the loom: a broken thread leaves its place, one too many has none.
 *
 * @formula places = threads + broken − tooMany
 * @units threads → places
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example oldPlaces({ threads: 370, broken: 1, tooMany: 1 }) // 370
 */
export const oldPlaces: Calculation<OldPlacesInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "oldPlaces",
  inputs: {
    threads: whole("threads", "of the old warp that are there", { atLeast: 1 }),
    broken: whole("threads", "broken, their heddle and part of a dent still there", { atLeast: 0 }),
    tooMany: whole("threads", "that share the heddle of the one before", { atLeast: 0 }),
  },
  formula: "places = threads + broken − tooMany",
  result: whole("places", "of the old warp", { atLeast: 0 }),
  source: commonPractice,
}));
