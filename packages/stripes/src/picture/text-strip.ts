import { check } from "../refusal/check.js";
import { aMap, someEnds, whole } from "../refusal/kinds.js";
import { everyEnd } from "../sequence/every-end.js";
import type { Sequence } from "../sequence/sequence.js";
import { shownFor, spelt } from "./paint.js";

export interface TextStripInput<C> {
  readonly sequence: Sequence<C>;
  /** One printable character for each colour. */
  readonly letters: ReadonlyMap<C, string>;
  readonly endsPerLine: number;
}

/**
 * The sequence for a terminal, one character an end; each line begins with the number of its first end.
 *
 * @throws StripeError for a colour without a letter
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * textStrip({ sequence: half, letters: new Map([["ash", "."], ["coal", "#"]]), endsPerLine: 60 }) // " 1  ............####"
 */
export function textStrip<C>(input: TextStripInput<C>): string {
  check("textStrip", input, { sequence: someEnds, letters: aMap, endsPerLine: whole(1, 1000) });
  const { sequence, letters, endsPerLine } = input;
  const aLetter = spelt(/^[^\p{C}\p{Z}\p{M}]$/u, "one printable character");
  const ends = everyEnd(sequence).map((colour) => shownFor("textStrip", "letters", letters, colour, aLetter));
  const lines = [];
  for (let first = 0; first < ends.length; first += endsPerLine) {
    const number = String(first + 1).padStart(String(ends.length).length);
    lines.push(`${number}  ${ends.slice(first, first + endsPerLine).join("")}`);
  }
  return lines.join("\n");
}
