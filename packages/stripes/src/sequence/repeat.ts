import { check } from "../refusal/check.js";
import { aSequence, whole } from "../refusal/kinds.js";
import { madeSequence, MOST_ENDS, refuseLength } from "./made-sequence.js";
import type { Sequence, Stripe } from "./sequence.js";

export interface RepeatInput<C> {
  readonly sequence: Sequence<C>;
  /** 0 gives no ends. */
  readonly times: number;
}

/**
 * A sequence as many times over.
 *
 * @throws StripeError for a number of times that is not whole, or more ends than a loom can hold
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * repeat({ sequence: half, times: 15 }).ends // 240
 */
export function repeat<C>(input: RepeatInput<C>): Sequence<C> {
  check("repeat", input, { sequence: aSequence, times: whole(0) });
  const { sequence, times } = input;
  if (sequence.ends * times > MOST_ENDS) refuseLength("repeat", sequence.ends * times);
  const written: Stripe<C>[] = [];
  for (let time = 0; time < times && sequence.ends > 0; time++) {
    for (const stripe of sequence.written) written.push(stripe);
  }
  return madeSequence("repeat", written);
}
