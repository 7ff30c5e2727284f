import { check } from "../refusal/check.js";
import { listOf, whole } from "../refusal/kinds.js";
import { MOST_ENDS } from "../sequence/made-sequence.js";
import { sharedOut } from "./shared-out.js";

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
  /** What the shares add up to: another number than the total was fitted to it. */
  readonly sharesInAll: number;
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
  check("apportionment", input, { shares: listOf(1, whole(1)), total: whole(1, MOST_ENDS), smallest: whole(0) });
  const { parts, tied } = sharedOut("apportionment", input.shares, input.total, input.smallest, 1);
  return { parts, tied: tied.map((index) => index + 1), sharesInAll: input.shares.reduce((sum, one) => sum + one, 0) };
}
