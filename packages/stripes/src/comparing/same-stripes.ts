import { check } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { sameStripe } from "../sequence/same-stripe.js";
import type { Sequence } from "../sequence/sequence.js";

export interface TwoSequences<C> {
  readonly first: Sequence<C>;
  readonly second: Sequence<C>;
}

/**
 * Whether two sequences are the same warp, end for end, however they were written.
 *
 * @throws StripeError for anything that is not a sequence
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * sameStripes({ first: warp, second: reverse(warp) }) // true
 */
export function sameStripes<C>(input: TwoSequences<C>): boolean {
  check("sameStripes", input, { first: aSequence, second: aSequence });
  const { first, second } = input;
  return (
    first.runs.length === second.runs.length &&
    first.runs.every((run, index) => sameStripe(run, item(second.runs, index)))
  );
}
