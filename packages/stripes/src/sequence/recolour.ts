import { check, refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import { aMap, aSequence } from "../refusal/kinds.js";
import { madeSequence, stripe } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";

export interface RecolourInput<C, D> {
  readonly sequence: Sequence<C>;
  /** From every colour of the sequence to the new one; two may become one. */
  readonly colours: ReadonlyMap<C, D>;
}

/**
 * The same widths in other colours.
 *
 * @throws StripeError for a colour of the sequence that has no new colour
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * recolour({ sequence: half, colours: new Map([["ash", "lime"], ["coal", "moss"]]) }).runs[0].colour // "lime"
 */
export function recolour<C, D>(input: RecolourInput<C, D>): Sequence<D> {
  check("recolour", input, { sequence: aSequence, colours: aMap });
  return madeSequence(
    "recolour",
    input.sequence.written.map(({ colour, ends }) => {
      const to = input.colours.get(colour);
      if (to !== undefined) return stripe(to, ends);
      return refuse("recolour", "missing", ["colours"], {
        expected: "a new colour for every old one",
        received: described(colour),
        remedy: "Name it too, even if it stays as it is.",
      });
    }),
  );
}
