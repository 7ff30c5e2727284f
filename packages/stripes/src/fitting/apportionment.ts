import { check, refuse } from "../refusal/check.js";
import { listOf, whole } from "../refusal/kinds.js";
import { MOST_ENDS } from "../sequence/made-sequence.js";
import { item } from "../sequence/item.js";
import { largestRemainders } from "./largest-remainders.js";

export interface ApportionmentInput {
  /** Whole numbers in any one step: eighths of an inch, millimetres, squares of graph paper. */
  readonly shares: readonly number[];
  readonly total: number;
  /** The least any share may receive; 0 lets a narrow one vanish. */
  readonly smallest: number;
}

export interface Apportionment {
  readonly parts: readonly number[];
  /** Numbers, from 1, of the shares among which equal remainders had to be decided. */
  readonly tied: readonly number[];
}

/**
 * Whole parts in proportion to the shares, by largest remainders: every part is its exact quota rounded down or up.
 *
 * Shares that would fall below the smallest part are given it first, and the rest is shared out again. Equal remainders
 * are decided from the left; among shares that read the same from both sides, in pairs from the outside inwards, the
 * middle one taking an odd one, so that the parts read the same from both sides wherever largest remainders allow it.
 *
 * @throws StripeError if the total is too small to give every share its smallest part
 * @example apportionment({ shares: [54, 243, 703], total: 11, smallest: 0 }).parts // [0, 3, 8]
 */
export function apportionment(input: ApportionmentInput): Apportionment {
  check("apportionment", input, { shares: listOf(whole(1)), total: whole(1, MOST_ENDS), smallest: whole(0) });
  const { shares, total, smallest } = input;
  if (smallest * shares.length > total) {
    refuse("apportionment", "does-not-fit", "smallest", {
      expected: `at most ${Math.floor(total / shares.length)}, for ${shares.length} shares of ${total}`,
      received: smallest,
      remedy: "Raise the total, leave a share out, or allow smaller parts.",
    });
  }
  const given = new Set<number>();
  for (;;) {
    const open = shares.map((_, index) => index).filter((index) => !given.has(index));
    const { parts, tied } = largestRemainders(shares, open, total - smallest * given.size);
    const low = open.filter((index) => item(parts, index) < smallest);
    if (low.length === 0) {
      return {
        parts: parts.map((part, index) => (given.has(index) ? smallest : part)),
        tied: tied.map((index) => index + 1),
      };
    }
    for (const index of low) given.add(index);
  }
}
