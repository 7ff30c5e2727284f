import { check, refuse } from "../refusal/check.js";
import { anyColour, listOf, aSequence, fields, oneOf, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { madeSequence, stripe } from "../sequence/made-sequence.js";
import { sameColour } from "../sequence/same-colour.js";
import type { Sequence, Stripe } from "../sequence/sequence.js";
import { stripesBetween } from "../sequence/stripes-between.js";
import type { Edit } from "./shortest-edit.js";

export interface EditedInput<C> {
  readonly sequence: Sequence<C>;
  readonly edit: Edit<C>;
}

/**
 * A warp after an edit, which must have been found for that warp.
 *
 * @throws StripeError if the edit keeps or takes out an end that the warp does not have there
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * const planned = multiply({ sequence: warp, by: 2 });
 * const edit = shortestEdit({ from: warp, to: planned });
 * sameStripes({ first: edited({ sequence: warp, edit }), second: planned }) // true
 */
export function edited<C>(input: EditedInput<C>): Sequence<C> {
  check("edited", input, {
    sequence: aSequence,
    edit: fields({
      changed: whole(0),
      steps: listOf(0, fields({ change: oneOf("keep", "take out", "put in"), colour: anyColour, ends: whole(1) })),
    }),
  });
  const { sequence, edit } = input;
  let at = 0;
  const written: Stripe<C>[] = [];
  for (const { change, colour, ends } of edit.steps) {
    if (change !== "put in") {
      const there = at + ends <= sequence.ends ? stripesBetween(sequence, at, at + ends) : [];
      if (there.length !== 1 || !sameColour(item(there, 0).colour, colour)) parted(at, ends);
      at += ends;
    }
    if (change !== "take out") written.push(stripe(colour, ends));
  }
  if (at !== sequence.ends) parted(at, 0);
  return madeSequence("edited", written);
}

function parted(after: number, ends: number): never {
  return refuse("edited", "does-not-fit", ["edit"], {
    expected: "an edit of this very sequence",
    received: `${ends} ends after end ${after} that it does not have`,
    remedy: "Find the edit from this sequence.",
  });
}
