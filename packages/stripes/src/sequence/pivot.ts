import { check } from "../refusal/check.js";
import { someEnds } from "../refusal/kinds.js";
import { item } from "./item.js";
import { madeSequence } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";
import { stripesBetween } from "./stripes-between.js";

/**
 * A sequence turned back at its last stripe, which stands once.
 *
 * @throws StripeError for a sequence without ends
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * pivot(half).ends // 28
 */
export function pivot<C>(sequence: Sequence<C>): Sequence<C> {
  check("pivot", { sequence }, { sequence: someEnds });
  const beforeLast = item(sequence.starts, sequence.starts.length - 1) - 1;
  return madeSequence("pivot", [...sequence.written, ...stripesBetween(sequence, 0, beforeLast).reverse()]);
}
