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
 * @example slice({ sequence: warp, after: 100, upTo: 200 }).ends // 100
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
  const first = runIndex(starts, after + 1);
  const last = runIndex(starts, upTo);
  const part: Stripe<C>[] = runs.slice(first, last + 1);
  shorten(part, part.length - 1, item(starts, last) + item(runs, last).ends - 1 - upTo);
  shorten(part, 0, after + 1 - item(starts, first));
  return madeSequence("slice", part);
}

function shorten<C>(part: Stripe<C>[], index: number, by: number): void {
  const { colour, ends } = item(part, index);
  if (by > 0) part[index] = Object.freeze({ colour, ends: ends - by });
}
