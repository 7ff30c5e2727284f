import { check } from "../refusal/check.js";
import { anyColour, fields, listOf, whole } from "../refusal/kinds.js";
import { MOST_ENDS } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { fittedShares } from "./fitted-shares.js";

export interface Share<C> {
  readonly colour: C;
  /** A whole number in any one step. */
  readonly share: number;
}

export interface SequenceFromSharesInput<C> {
  readonly stripes: readonly Share<C>[];
  readonly ends: number;
  /** Every stripe shall be a multiple of this: 1 for free, 2 for pairs, the ends of a dent or of a threading repeat. */
  readonly step: number;
  /** Fewest ends of a stripe; 0 lets a narrow one vanish. */
  readonly smallest: number;
}

export interface FittedSequence<C> {
  readonly sequence: Sequence<C>;
  /** Numbers of the stripes among which a step had to be given by the rule for ties. */
  readonly tied: readonly number[];
  /** Numbers of the stripes too narrow to receive an end. */
  readonly vanished: readonly number[];
  /** What the shares add up to: shares in per cent that make 90 were fitted to the ends all the same. */
  readonly sharesInAll: number;
}

/**
 * Stripes of the ends nearest to their shares.
 *
 * @throws StripeError if the ends are no multiple of the step, or too few for the smallest stripe
 * @example
 * const stripes = [{ colour: "ash", share: 3 }, { colour: "coal", share: 1 }];
 * sequenceFromShares({ stripes, ends: 40, step: 2, smallest: 2 }).sequence.runs[0].ends // 30
 */
export function sequenceFromShares<C>(input: SequenceFromSharesInput<C>): FittedSequence<C> {
  check("sequenceFromShares", input, {
    stripes: listOf(1, fields({ colour: anyColour, share: whole(1) })),
    ends: whole(1, MOST_ENDS),
    step: whole(1),
    smallest: whole(0),
  });
  return fittedShares("sequenceFromShares", input);
}
