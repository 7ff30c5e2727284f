import { check } from "../refusal/check.js";
import { oneOf, someEnds } from "../refusal/kinds.js";
import { fullSettOf } from "./full-sett-of.js";
import type { Sequence } from "./sequence.js";

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
  return fullSettOf("fullSett", input.sett, input.pivots);
}
