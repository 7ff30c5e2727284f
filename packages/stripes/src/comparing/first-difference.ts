import { check } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { sameColour } from "../sequence/same-colour.js";
import type { TwoSequences } from "./same-stripes.js";

export interface Difference<C> {
  /** Number of the first end that differs. */
  readonly end: number;
  /** Its colour in each; undefined in a sequence that has no such end. */
  readonly first: C | undefined;
  readonly second: C | undefined;
}

/**
 * Where two warps first part; null if they never do.
 *
 * @throws StripeError for anything that is not a sequence
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * firstDifference({ first: half, second: reverse(half) }).end // 1
 */
export function firstDifference<C>(input: TwoSequences<C>): Difference<C> | null {
  check("firstDifference", input, { first: aSequence, second: aSequence });
  const { first, second } = input;
  const shared = Math.min(first.runs.length, second.runs.length);
  for (let index = 0; index < shared; index++) {
    const [one, other] = [item(first.runs, index), item(second.runs, index)];
    const start = item(first.starts, index);
    if (!sameColour(one.colour, other.colour)) return { end: start, first: one.colour, second: other.colour };
    if (one.ends !== other.ends) {
      const oneEndsFirst = one.ends < other.ends;
      return {
        end: start + Math.min(one.ends, other.ends),
        first: oneEndsFirst ? first.runs[index + 1]?.colour : one.colour,
        second: oneEndsFirst ? other.colour : second.runs[index + 1]?.colour,
      };
    }
  }
  if (first.ends === second.ends) return null;
  const end = Math.min(first.ends, second.ends) + 1;
  return { end, first: first.runs[shared]?.colour, second: second.runs[shared]?.colour };
}
