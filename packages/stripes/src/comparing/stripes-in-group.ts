import { check } from "../refusal/check.js";
import { someEnds, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { runIndex } from "../sequence/run-index.js";
import type { Sequence } from "../sequence/sequence.js";

export interface StripesInGroupInput<C> {
  readonly sequence: Sequence<C>;
  readonly firstEnd: number;
  readonly lastEnd: number;
}

export interface StripeInGroup<C> {
  /** Number of the stripe in the whole sequence, from 1. */
  readonly stripe: number;
  readonly colour: C;
  /** First and last of its ends within the group. */
  readonly firstEnd: number;
  readonly lastEnd: number;
  /** Its ends within the group, and in all. */
  readonly ends: number;
  readonly ofEnds: number;
}

/**
 * The stripes, or parts of them, that lie in a group of ends: what a group counted off at the loom should show.
 *
 * @throws StripeError for a group outside the sequence
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * stripesInGroup({ sequence: warp, firstEnd: 1, lastEnd: 48 }).map(({ ends }) => ends) // [24, 24]
 */
export function stripesInGroup<C>(input: StripesInGroupInput<C>): readonly StripeInGroup<C>[] {
  check("stripesInGroup", input, { sequence: someEnds, firstEnd: whole(1), lastEnd: whole(1) });
  const { sequence, firstEnd, lastEnd } = input;
  if (lastEnd > sequence.ends || firstEnd > lastEnd) {
    check("stripesInGroup", { lastEnd }, { lastEnd: whole(firstEnd, sequence.ends) });
  }
  const [from, to] = [runIndex(sequence.starts, firstEnd), runIndex(sequence.starts, lastEnd)];
  return sequence.runs.slice(from, to + 1).map(({ colour, ends: ofEnds }, index) => {
    const start = item(sequence.starts, from + index);
    const [first, last] = [Math.max(start, firstEnd), Math.min(start + ofEnds - 1, lastEnd)];
    return { stripe: from + index + 1, colour, firstEnd: first, lastEnd: last, ends: last - first + 1, ofEnds };
  });
}
