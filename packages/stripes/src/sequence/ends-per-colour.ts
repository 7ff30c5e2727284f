import { check } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import type { Sequence, Stripe } from "./sequence.js";
import { totalsOf } from "./totals.js";

/**
 * Ends of each colour, in the order in which the colours first appear.
 *
 * @throws StripeError for anything that is not a sequence
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * endsPerColour(warp) // [{ colour: "ash", ends: 48 }, { colour: "madder", ends: 72 }]
 */
export function endsPerColour<C>(sequence: Sequence<C>): readonly Stripe<C>[] {
  check("endsPerColour", { sequence }, { sequence: aSequence });
  return [...totalsOf(sequence)].map(([colour, ends]) => ({ colour, ends }));
}
