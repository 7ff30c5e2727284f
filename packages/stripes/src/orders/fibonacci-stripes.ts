import { check, refuse } from "../refusal/check.js";
import { anyColour, listOf, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { madeSequence, MOST_ENDS, stripe } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";

export interface FibonacciStripesInput<C> {
  /** Taken in turn, again from the first when they run out. */
  readonly colours: readonly C[];
  /** Fibonacci numbers in any order; they may repeat or be left out. */
  readonly numbers: readonly number[];
}

/**
 * Stripes of 1, 2, 3, 5, 8, 13 … ends: every number the sum of the two before it.
 *
 * @throws StripeError for a number that is none of them
 * @example fibonacciStripes({ colours: ["ash", "coal"], numbers: [1, 2, 3, 5, 8] }).ends // 19
 */
export function fibonacciStripes<C>(input: FibonacciStripesInput<C>): Sequence<C> {
  check("fibonacciStripes", input, { colours: listOf(1, anyColour), numbers: listOf(1, whole(1, MOST_ENDS)) });
  const { colours, numbers } = input;
  const known = new Set<number>();
  for (let [one, next] = [1, 2]; one <= MOST_ENDS; [one, next] = [next, one + next]) known.add(one);
  const wrong = numbers.findIndex((number) => !known.has(number));
  if (wrong >= 0) {
    refuse("fibonacciStripes", "out-of-range", ["numbers", wrong], {
      expected: "one of 1, 2, 3, 5, 8, 13, 21, 34 …",
      received: item(numbers, wrong),
      remedy: "Use the nearest; multiply the finished stripes for a coarser step.",
    });
  }
  return madeSequence(
    "fibonacciStripes",
    numbers.map((ends, index) => stripe(item(colours, index % colours.length), ends)),
  );
}
