import { check } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import type { Sequence } from "./sequence.js";

/**
 * Ends of each colour, in the order in which the colours first appear.
 *
 * @throws StripeError for anything that is not a sequence
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * endsPerColour(warp).get("madder") // 72
 */
export function endsPerColour<C>(sequence: Sequence<C>): ReadonlyMap<C, number> {
  check("endsPerColour", { sequence }, { sequence: aSequence });
  const totals = new Map<C, number>();
  for (const { colour, ends } of sequence.runs) totals.set(colour, (totals.get(colour) ?? 0) + ends);
  return totals;
}
