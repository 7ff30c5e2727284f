import { check } from "../refusal/check.js";
import { aSequence, listOf } from "../refusal/kinds.js";
import { madeSequence } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";

/**
 * One sequence after the other.
 *
 * @throws StripeError for an empty list, or anything in it that is not a sequence
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * join([half, half]).ends // 32
 */
export function join<C>(sequences: readonly Sequence<C>[]): Sequence<C> {
  check("join", { sequences }, { sequences: listOf(1, aSequence) });
  return madeSequence(
    "join",
    sequences.flatMap(({ written }) => written),
  );
}
