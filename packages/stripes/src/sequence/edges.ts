import { check } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import { item } from "./item.js";
import type { Sequence } from "./sequence.js";

/**
 * Number of the last end of every stripe, where a colour ends and a miscount shows.
 *
 * @throws StripeError for anything that is not a sequence
 * @example edges(sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }])) // [12, 16]
 */
export function edges<C>(sequence: Sequence<C>): readonly number[] {
  check("edges", { sequence }, { sequence: aSequence });
  return sequence.runs.map(({ ends }, index) => item(sequence.starts, index) + ends - 1);
}
