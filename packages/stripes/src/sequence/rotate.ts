import { check } from "../refusal/check.js";
import { someEnds, whole } from "../refusal/kinds.js";
import { madeSequence } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";
import { stripesBetween } from "./stripes-between.js";

export interface RotateInput<C> {
  readonly sequence: Sequence<C>;
  /** How many ends go from the beginning to the far side. */
  readonly by: number;
}

/**
 * The same repeat begun at another end.
 *
 * @throws StripeError for a sequence without ends, or a number of ends that is not whole
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * rotate({ sequence: half, by: 12 }).runs[0].colour // "coal"
 */
export function rotate<C>(input: RotateInput<C>): Sequence<C> {
  check("rotate", input, { sequence: someEnds, by: whole(0) });
  const { sequence } = input;
  const by = input.by % sequence.ends;
  if (by === 0) return sequence;
  return madeSequence("rotate", [...stripesBetween(sequence, by, sequence.ends), ...stripesBetween(sequence, 0, by)]);
}
