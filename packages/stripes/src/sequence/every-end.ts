import { check } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import type { Sequence } from "./sequence.js";

/**
 * The colour of every end, one after the other.
 *
 * @throws StripeError for anything that is not a sequence
 * @example everyEnd(sequence([{ colour: "ash", ends: 2 }, { colour: "coal", ends: 1 }])) // ["ash", "ash", "coal"]
 */
export function everyEnd<C>(sequence: Sequence<C>): readonly C[] {
  check("everyEnd", { sequence }, { sequence: aSequence });
  const colours: C[] = [];
  for (const { colour, ends } of sequence.runs) {
    for (let end = 0; end < ends; end++) colours.push(colour);
  }
  return colours;
}
