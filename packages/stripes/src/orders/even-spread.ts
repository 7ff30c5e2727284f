import { check, refuse } from "../refusal/check.js";
import { anyColour, whole } from "../refusal/kinds.js";
import { madeFromEnds } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";

export interface EvenSpreadInput<C> {
  readonly colour: C;
  readonly ground: C;
  /** Ends of the colour; the others are ground. */
  readonly marks: number;
  readonly ends: number;
}

/**
 * A number of ends of one colour spread as evenly as can be, the first of them on end 1: any two windows of one width
 * hold the same number, or one more.
 *
 * @throws StripeError for more marks than ends
 * @example evenSpread({ colour: "coal", ground: "ash", marks: 3, ends: 8 }).runs.map(({ ends }) => ends) // [1, 2, 1, 2, 1, 1]
 */
export function evenSpread<C>(input: EvenSpreadInput<C>): Sequence<C> {
  check("evenSpread", input, { colour: anyColour, ground: anyColour, marks: whole(0), ends: whole(1, 100_000) });
  const { colour, ground, marks, ends } = input;
  if (marks > ends) {
    refuse("evenSpread", "out-of-range", ["marks"], {
      expected: `at most the ${ends} ends`,
      received: marks,
      remedy: "Fewer marks, or more ends.",
    });
  }
  return madeFromEnds(
    "evenSpread",
    Array.from({ length: ends }, (_, end) => ((end * marks) % ends < marks ? colour : ground)),
  );
}
