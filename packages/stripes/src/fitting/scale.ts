import { check } from "../refusal/check.js";
import { someEnds, whole } from "../refusal/kinds.js";
import { MOST_ENDS } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { fittedShares } from "./fitted-shares.js";
import type { FittedSequence } from "./sequence-from-shares.js";

export interface ScaleInput<C> {
  readonly sequence: Sequence<C>;
  /** Ends wanted in all. */
  readonly ends: number;
  /** Every stripe shall be a multiple of this. */
  readonly step: number;
  /** Fewest ends of a stripe. */
  readonly smallest: number;
}

/**
 * The same proportions in another number of ends, as nearly as whole steps allow.
 *
 * @throws StripeError if the ends are no multiple of the step, or too few for the smallest stripe
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * scale({ sequence: warp, ends: 240, step: 4, smallest: 4 }).sequence.runs.map(({ ends }) => ends) // [48, 144, 48]
 */
export function scale<C>(input: ScaleInput<C>): FittedSequence<C> {
  check("scale", input, { sequence: someEnds, ends: whole(1, MOST_ENDS), step: whole(1), smallest: whole(0) });
  const { sequence, ...wanted } = input;
  const stripes = sequence.runs.map(({ colour, ends }) => ({ colour, share: ends }));
  return fittedShares("scale", { ...wanted, stripes });
}
