import { refuse } from "../refusal/check.js";
import { sameColour } from "./same-colour.js";
import type { Sequence, Stripe } from "./sequence.js";

/** More than any loom holds, and few enough to list end by end. */
export const MOST_ENDS = 5_000_000;

/** A sequence from stripes already checked and frozen. */
export function madeSequence<C>(refusedBy: string, written: readonly Stripe<C>[]): Sequence<C> {
  const runs: Stripe<C>[] = [];
  const starts: number[] = [];
  let ends = 0;
  let last: Stripe<C> | undefined;
  for (const next of written) {
    if (last !== undefined && sameColour(last.colour, next.colour)) {
      last = stripe(last.colour, last.ends + next.ends);
      runs[runs.length - 1] = last;
    } else {
      last = next;
      runs.push(next);
      starts.push(ends + 1);
    }
    ends += next.ends;
  }
  if (ends > MOST_ENDS) refuseLength(refusedBy, ends);
  return new MadeSequence(
    Object.freeze(runs),
    Object.freeze(starts),
    ends,
    runs.length === written.length ? runs : Object.freeze(written),
  );
}

/** The same from stripes of which no two neighbours are of one colour, and which are few enough. */
export function madeFromRuns<C>(runs: readonly Stripe<C>[]): Sequence<C> {
  const starts: number[] = [];
  let ends = 0;
  for (const run of runs) {
    starts.push(ends + 1);
    ends += run.ends;
  }
  return new MadeSequence(Object.freeze(runs), Object.freeze(starts), ends, runs);
}

/**
 * The brand is inherited, so that no copy takes it along; an own list of runs tells it from what inherits from it.
 * It is spelt out, for bundlers keep a class with a computed name even where nobody uses it.
 */
class MadeSequence<C> implements Sequence<C> {
  constructor(
    readonly runs: readonly Stripe<C>[],
    readonly starts: readonly number[],
    readonly ends: number,
    readonly written: readonly Stripe<C>[],
  ) {
    Object.freeze(this);
  }
  // Stryker disable next-line StringLiteral: the name of a getter cannot be swapped while the code runs
  get "thrum.sequence.1"(): readonly Stripe<C>[] {
    return this.runs;
  }
}

/** A sequence of ends already checked; what is written are the stripes one sees. */
export function madeFromEnds<C>(refusedBy: string, colours: readonly C[]): Sequence<C> {
  const single = madeSequence(
    refusedBy,
    colours.map((colour) => stripe(colour, 1)),
  );
  return madeFromRuns(single.runs);
}

/** A stripe that stays as it is. */
export function stripe<C>(colour: C, ends: number): Stripe<C> {
  return Object.freeze({ colour, ends });
}

/** Refuses a total before memory is spent on it. */
export function refuseLength(refusedBy: string, ends: number, most: number = MOST_ENDS): never {
  return refuse(refusedBy, "too-long", [], {
    expected: `at most ${most} ends`,
    received: ends,
    remedy: "Look for a slip in a count.",
    params: { atMost: most },
  });
}
