import { check, refuse } from "../refusal/check.js";
import { someEnds, whole } from "../refusal/kinds.js";
import { madeSequence } from "../sequence/made-sequence.js";
import { repeat } from "../sequence/repeat.js";
import { mirrored } from "../sequence/mirrored.js";
import type { Sequence } from "../sequence/sequence.js";

export interface BalancedInput<C> {
  readonly repeat: Sequence<C>;
  readonly times: number;
}

export interface BalancedSequence<C> {
  readonly sequence: Sequence<C>;
  /** What follows the last whole repeat so that both sides are alike; it may have no ends. */
  readonly closing: Sequence<C>;
}

/**
 * A repeat as many times over and the closing stripes it needs to look the same from both sides.
 *
 * @throws StripeError for a repeat that no closing stripes can balance
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * balanced({ repeat: half, times: 12 }).closing.ends // 12
 */
export function balanced<C>(input: BalancedInput<C>): BalancedSequence<C> {
  check("balanced", input, { repeat: someEnds, times: whole(1) });
  const { runs } = input.repeat;
  for (let stripes = 0; stripes < runs.length; stripes++) {
    // A repeat of two parts, each alike from both sides, is balanced by its first part once more.
    if (mirrored(runs, 0, stripes) && mirrored(runs, stripes, runs.length)) {
      const first = runs.slice(0, stripes);
      const repeated = repeat({ sequence: input.repeat, times: input.times });
      return {
        sequence: madeSequence("balanced", [...repeated.written, ...first]),
        closing: madeSequence("balanced", first),
      };
    }
  }
  return refuse("balanced", "not-symmetrical", ["repeat"], {
    expected: "a repeat that reverses at one of its stripes",
    received: `a repeat of ${runs.length} stripes that does not`,
    remedy: "Mirror it instead, or add borders.",
  });
}
