import { check } from "../refusal/check.js";
import { anyColour, whole } from "../refusal/kinds.js";
import { madeFromEnds } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";

export interface GradedBlendInput<C> {
  readonly from: C;
  readonly to: C;
  readonly ends: number;
}

/**
 * A blend that grows steadily from one colour into another: of the first i of n ends, i² ÷ 2n are of the second
 * colour, rounded to the nearest whole end, a half up.
 *
 * @throws StripeError for a number of ends that is not whole
 * @example gradedBlend({ from: "ash", to: "coal", ends: 24 }).ends // 24
 */
export function gradedBlend<C>(input: GradedBlendInput<C>): Sequence<C> {
  check("gradedBlend", input, { from: anyColour, to: anyColour, ends: whole(2, 100_000) });
  const { from, to, ends } = input;
  const second = (end: number): number => Math.floor((end * end + ends) / (2 * ends));
  return madeFromEnds(
    "gradedBlend",
    Array.from({ length: ends }, (_, end) => (second(end + 1) > second(end) ? to : from)),
  );
}
