import { check, refuse } from "../refusal/check.js";
import { aSequence, whole } from "../refusal/kinds.js";
import { item } from "./item.js";
import { madeSequence } from "./made-sequence.js";
import { runIndex } from "./run-index.js";
import type { Sequence, Stripe } from "./sequence.js";

export interface SliceInput<C> {
  readonly sequence: Sequence<C>;
  /** The cut before the first end wanted: 0 begins at end 1. */
  readonly after: number;
  /** Number of the last end wanted. */
  readonly upTo: number;
}

/**
 * The ends after one cut and up to another; what is cut out counts as written in the stripes one sees.
 *
 * @throws StripeError for a cut outside the sequence, or the two cuts in the wrong order
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * slice({ sequence: warp, after: 20, upTo: 50 }).ends // 30
 */
export function slice<C>(input: SliceInput<C>): Sequence<C> {
  check("slice", input, { sequence: aSequence, after: whole(0), upTo: whole(0) });
  const { sequence, after, upTo } = input;
  if (upTo > sequence.ends || after > upTo) {
    refuse("slice", "out-of-range", after > upTo ? "after" : "upTo", {
      expected: `cuts in order, from 0 to ${sequence.ends}`,
      received: after > upTo ? after : upTo,
      remedy: "Ends are numbered from 1.",
    });
  }
  if (after === upTo) return madeSequence<C>("slice", []);
  const { runs, starts } = sequence;
  const part: Stripe<C>[] = [];
  let start = after;
  // A walk, because Array.slice of a frozen list takes several times as long.
  for (let index = runIndex(starts, after + 1); start < upTo; index++) {
    const run = item(runs, index);
    const end = Math.min(item(starts, index) - 1 + run.ends, upTo);
    part.push(end - start === run.ends ? run : Object.freeze({ colour: run.colour, ends: end - start }));
    start = end;
  }
  return madeSequence("slice", part);
}
