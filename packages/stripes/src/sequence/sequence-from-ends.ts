import { check } from "../refusal/check.js";
import { anyColour, listOf } from "../refusal/kinds.js";
import { madeSequence } from "./made-sequence.js";
import { sequence, type Sequence } from "./sequence.js";

/**
 * The sequence of ends listed one by one, as they are counted at the loom.
 *
 * @throws StripeError for an empty list
 * @example sequenceFromEnds(["ash", "ash", "coal"]).runs.length // 2
 */
export function sequenceFromEnds<C>(colours: readonly C[]): Sequence<C> {
  check("sequenceFromEnds", { colours }, { colours: listOf(anyColour) });
  const ends = colours.map((colour) => ({ colour, ends: 1 }));
  return madeSequence("sequenceFromEnds", sequence(ends).runs);
}
