import { check } from "../refusal/check.js";
import { someEnds } from "../refusal/kinds.js";
import { madeSequence } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";

/**
 * A sequence and its reverse, so that the last stripe comes out twice as wide.
 *
 * @throws StripeError for a sequence without ends
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * mirror(half).ends // 32
 */
export function mirror<C>(sequence: Sequence<C>): Sequence<C> {
  check("mirror", { sequence }, { sequence: someEnds });
  return madeSequence("mirror", [...sequence.written, ...[...sequence.written].reverse()]);
}
