import { aSeed, draws } from "../orders/draws.js";
import { anyColour } from "../refusal/kinds.js";
import { madeFromEnds } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { checkPairs, type Lead } from "./lead.js";

export interface PairPreviewInput<C> {
  /** The same seed gives the same order everywhere. */
  readonly seed: number;
  readonly pairs: number;
  readonly lead: Lead;
  readonly first: C;
  readonly second: C;
}

/**
 * One of the orders that pairs wound together may fall into at the loom.
 *
 * @throws StripeError for a lead of more times than it is out of
 * @example
 * const lead = { times: 1, outOf: 2 };
 * pairPreview({ seed: 3, pairs: 8, lead, first: "ash", second: "coal" }).ends // 16
 */
export function pairPreview<C>(input: PairPreviewInput<C>): Sequence<C> {
  checkPairs("pairPreview", input, { seed: aSeed, first: anyColour, second: anyColour });
  const { pairs, lead, first, second } = input;
  const below = draws(input.seed);
  return madeFromEnds(
    "pairPreview",
    Array.from({ length: pairs }, () => (below(lead.outOf) < lead.times ? [first, second] : [second, first])).flat(),
  );
}
