import { type Check, check, type Checks } from "../refusal/check.js";
import { aSequence, whole } from "../refusal/kinds.js";
import { madeFromRuns } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";
import { stripesBetween } from "./stripes-between.js";

export interface SliceInput<C> {
  readonly sequence: Sequence<C>;
  /** The cut before the first end wanted: 0 begins at end 1. */
  readonly after: number;
  /** Number of the last end wanted. */
  readonly upTo: number;
}

const A_CUT: Check = /* @__PURE__ */ whole(0);
/** Made once: to make the checks takes as long as to cut the slice. */
const CHECKS: Checks = { sequence: aSequence, after: A_CUT, upTo: A_CUT };

/**
 * The ends after one cut and up to another; what is cut out counts as written in the stripes one sees.
 *
 * @throws StripeError for a cut outside the sequence, or the two cuts in the wrong order
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * slice({ sequence: warp, after: 20, upTo: 50 }).ends // 30
 */
export function slice<C>(input: SliceInput<C>): Sequence<C> {
  check("slice", input, CHECKS);
  const { sequence, after, upTo } = input;
  if (upTo > sequence.ends || after > upTo) {
    check("slice", { after, upTo }, { after: whole(0, upTo), upTo: whole(0, sequence.ends) });
  }
  return madeFromRuns(stripesBetween(sequence, after, upTo));
}
