import { check, refuse } from "../refusal/check.js";
import { oneOf, someEnds } from "../refusal/kinds.js";
import { item } from "./item.js";
import { madeSequence, stripe } from "./made-sequence.js";
import type { Sequence, Stripe } from "./sequence.js";

/** How a pattern sett is to be read: its first and last stripe counted whole, counted half, or no pivots at all. */
export type Pivots = "full count" | "half count" | "repeating";

export interface FullSettInput<C> {
  /** The sett as written, from pivot to pivot, or entire if it repeats straight on. */
  readonly sett: Sequence<C>;
  /** Never guessed: one and the same count gives two cloths. */
  readonly pivots: Pivots;
}

/**
 * One whole repeat of a sett, beginning with its first pivot.
 *
 * @throws StripeError for a half sett of a single stripe, which has no second pivot
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * fullSett({ sett: half, pivots: "half count" }).ends // 32
 */
export function fullSett<C>(input: FullSettInput<C>): Sequence<C> {
  check("fullSett", input, { sett: someEnds, pivots: oneOf("full count", "half count", "repeating") });
  const { sett, pivots } = input;
  if (pivots === "repeating") return sett;
  const { runs, ends } = sett;
  if (runs.length === 1) {
    refuse("fullSett", "does-not-fit", "sett", {
      expected: "a half sett of two stripes or more",
      received: `one stripe of ${ends} ends`,
      remedy: 'Cloth of one colour has no pivots: say "repeating".',
    });
  }
  const times = pivots === "half count" ? 2 : 1;
  const widened = (index: number): Stripe<C> => stripe(item(runs, index).colour, item(runs, index).ends * times);
  const inner = runs.slice(1, -1);
  return madeSequence("fullSett", [widened(0), ...inner, widened(runs.length - 1), ...[...inner].reverse()]);
}
