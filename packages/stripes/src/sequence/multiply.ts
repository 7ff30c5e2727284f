import { check } from "../refusal/check.js";
import { aSequence, whole } from "../refusal/kinds.js";
import { madeSequence, stripe } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";

export interface MultiplyInput<C> {
  readonly sequence: Sequence<C>;
  readonly by: number;
}

/**
 * Every stripe as many times as wide, the proportions exactly kept.
 *
 * @throws StripeError for a factor that is not a whole number of 1 or more
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * multiply({ sequence: half, by: 4 }).ends // 64
 */
export function multiply<C>(input: MultiplyInput<C>): Sequence<C> {
  check("multiply", input, { sequence: aSequence, by: whole(1) });
  return madeSequence(
    "multiply",
    input.sequence.written.map(({ colour, ends }) => stripe(colour, ends * input.by)),
  );
}
