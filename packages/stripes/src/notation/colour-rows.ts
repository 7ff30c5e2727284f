import { check } from "../refusal/check.js";
import { oneOf, someEnds } from "../refusal/kinds.js";
import { totalsOf } from "../sequence/totals.js";
import { reverse } from "../sequence/reverse.js";
import { sameColour } from "../sequence/same-colour.js";
import type { Sequence } from "../sequence/sequence.js";
import type { ColourRow } from "./sequence-from-colour-rows.js";

export interface ColourRowsInput<C> {
  readonly sequence: Sequence<C>;
  /** Side of the chart where end 1 shall stand. */
  readonly readFrom: "left" | "right";
}

/**
 * A chart with a row for each colour and a column for each stripe as written, 0 where a row is blank.
 *
 * @throws StripeError for a sequence without ends
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * colourRows({ sequence: half, readFrom: "left" })[0].ends // [12, 0]
 */
export function colourRows<C>(input: ColourRowsInput<C>): readonly ColourRow<C>[] {
  check("colourRows", input, { sequence: someEnds, readFrom: oneOf("left", "right") });
  const { sequence, readFrom } = input;
  const { written } = readFrom === "left" ? sequence : reverse(sequence);
  return [...totalsOf(sequence).keys()].map((colour) => ({
    colour,
    ends: written.map((stripe) => (sameColour(stripe.colour, colour) ? stripe.ends : 0)),
  }));
}
