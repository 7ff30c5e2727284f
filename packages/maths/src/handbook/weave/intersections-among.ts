import { calculation, drawnAs, plainNumber, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";

export interface IntersectionsAmongInput {
  /** Crossed, of one inch or any other stretch. */
  readonly threads: number;
  /** Where the thread passes between face and back. */
  readonly intersections: number;
  /** That the thread crosses. */
  readonly threadsInRepeat: number;
}

/**
 * Intersections of one thread with so many threads that cross it, as with the picks of an inch or over the repeats of two weaves.
 *
 * @formula intersectionsAmong = threads × intersections ÷ threadsInRepeat
 * @units threads; intersections in one weave repeat; threads in one weave repeat → intersections
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example intersectionsAmong({ threads: 180, intersections: 2, threadsInRepeat: 5 }) // 72
 */
export const intersectionsAmong: Calculation<IntersectionsAmongInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "intersectionsAmong",
  inputs: {
    threads: plainNumber("threads", "crossed, of one inch or any other stretch"),
    intersections: drawnAs(
      whole("intersections in one weave repeat", "where the thread passes between face and back", {
        atLeast: 1,
      }),
      "as given",
    ),
    threadsInRepeat: drawnAs(
      whole("threads in one weave repeat", "that the thread crosses", { atLeast: 1 }),
      "as given",
    ),
  },
  formula: "intersectionsAmong = threads × intersections ÷ threadsInRepeat",
  result: plainNumber("intersections", "of the one thread"),
  source: taylor1909,
}));
