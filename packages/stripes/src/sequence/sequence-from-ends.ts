import { check } from "../refusal/check.js";
import { anyColour, listOf } from "../refusal/kinds.js";
import { madeFromEnds } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";

/**
 * The sequence of ends listed one by one, as they are counted at the loom.
 *
 * @throws StripeError for an empty list
 * @example sequenceFromEnds(["ash", "ash", "coal"]).runs.length // 2
 */
export function sequenceFromEnds<C>(colours: readonly C[]): Sequence<C> {
  check("sequenceFromEnds", { colours }, { colours: listOf(1, anyColour) });
  return madeFromEnds("sequenceFromEnds", colours);
}
