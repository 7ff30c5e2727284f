import { check } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import { madeSequence } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";

/**
 * The sequence read from its other side.
 *
 * @throws StripeError for anything that is not a sequence
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * reverse(half).runs[0].colour // "coal"
 */
export function reverse<C>(sequence: Sequence<C>): Sequence<C> {
  check("reverse", { sequence }, { sequence: aSequence });
  return madeSequence("reverse", [...sequence.written].reverse());
}
