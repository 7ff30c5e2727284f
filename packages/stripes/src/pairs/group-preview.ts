import { aSeed, draws } from "../orders/draws.js";
import { check } from "../refusal/check.js";
import { anyColour, listOf, whole } from "../refusal/kinds.js";
import { madeFromEnds } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { MOST_PAIRS } from "./lead.js";

export interface GroupPreviewInput<C> {
  /** The same seed gives the same order everywhere. */
  readonly seed: number;
  readonly groups: number;
  /** The threads of one group, each as often as it is held. */
  readonly hand: readonly C[];
}

/**
 * One of the orders that groups of threads wound together may fall into at the loom; all are as likely.
 *
 * @throws StripeError for a hand without threads
 * @example groupPreview({ seed: 3, groups: 3, hand: ["ash", "ash", "coal"] }).ends // 9
 */
export function groupPreview<C>(input: GroupPreviewInput<C>): Sequence<C> {
  check("groupPreview", input, { seed: aSeed, groups: whole(1, MOST_PAIRS), hand: listOf(1, anyColour) });
  const { seed, groups, hand } = input;
  const below = draws(seed);
  const ends: C[] = [];
  for (let group = 0; group < groups; group++) {
    const left = [...hand];
    while (left.length > 0) ends.push(...left.splice(below(left.length), 1));
  }
  return madeFromEnds("groupPreview", ends);
}
