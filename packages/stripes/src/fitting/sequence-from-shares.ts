import { check, refuse } from "../refusal/check.js";
import { anyColour, fields, listOf, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { MOST_ENDS } from "../sequence/made-sequence.js";
import { sequence, type Sequence } from "../sequence/sequence.js";
import { apportionment } from "./apportionment.js";

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
  const aShare = fields({ colour: anyColour, share: whole(1) });
  check("sequenceFromShares", input, {
    stripes: listOf(aShare),
    ends: whole(1, MOST_ENDS),
    step: whole(1),
    smallest: whole(0),
  });
  const { stripes, ends, step, smallest } = input;
  refuseBrokenStep("sequenceFromShares", ends, step);
  const shares = stripes.map(({ share }) => share);
  const { parts, tied } = apportionment({ shares, total: ends / step, smallest: Math.ceil(smallest / step) });
  const kept = stripes.flatMap(({ colour }, index) => {
    const part = item(parts, index);
    return part === 0 ? [] : [{ colour, ends: part * step }];
  });
  const vanished = parts.flatMap((part, index) => (part === 0 ? [index + 1] : []));
  return { sequence: sequence(kept), tied, vanished };
}

export function refuseBrokenStep(refusedBy: string, ends: number, step: number): void {
  if (ends % step === 0) return;
  const below = ends - (ends % step);
  refuse(refusedBy, "does-not-fit", "ends", {
    expected: `a multiple of ${step}, such as ${below || step} or ${below + step}`,
    received: ends,
    remedy: "Add or drop ends first.",
  });
}
