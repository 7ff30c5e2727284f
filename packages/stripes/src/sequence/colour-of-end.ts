import { check } from "../refusal/check.js";
import { someEnds, whole } from "../refusal/kinds.js";
import { item } from "./item.js";
import { runIndex } from "./run-index.js";
import type { Sequence } from "./sequence.js";

export interface ColourOfEndInput<C> {
  readonly sequence: Sequence<C>;
  /** Number of the end, from 1. */
  readonly end: number;
}

/**
 * Colour of one end.
 *
 * @throws StripeError for an end that the sequence does not have
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * colourOfEnd({ sequence: warp, end: 43 }) // "madder"
 */
export function colourOfEnd<C>(input: ColourOfEndInput<C>): C {
  check("colourOfEnd", input, { sequence: someEnds, end: whole(1) });
  const { sequence, end } = input;
  if (end > sequence.ends) check("colourOfEnd", { end }, { end: whole(1, sequence.ends) });
  return item(sequence.runs, runIndex(sequence.starts, end)).colour;
}
