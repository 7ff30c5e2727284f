import { check, PASSED } from "../refusal/check.js";
import { aMap, listOf, aSequence, whole } from "../refusal/kinds.js";
import { totalsOf } from "../sequence/totals.js";
import type { Sequence } from "../sequence/sequence.js";

export interface CountDisagreementsInput<C> {
  readonly sequence: Sequence<C>;
  /** The total a book prints; null where it prints none. */
  readonly printedTotal: number | null;
  /** The totals it prints for single colours; may be empty. */
  readonly printedOfColour: ReadonlyMap<C, number>;
}

export interface CountDisagreement<C> {
  /** The colour counted; undefined for the total. */
  readonly colour: C | undefined;
  readonly printed: number;
  readonly counted: number;
}

/**
 * Where the totals a book prints differ from the stripes it prints; empty if they agree.
 *
 * @throws StripeError for totals that are not whole numbers
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * countDisagreements({ sequence: warp, printedTotal: 118, printedOfColour: new Map() })[0].counted // 120
 */
export function countDisagreements<C>(input: CountDisagreementsInput<C>): readonly CountDisagreement<C>[] {
  check("countDisagreements", input, {
    sequence: aSequence,
    printedTotal: (value, path) => (value === null ? PASSED : whole(0)(value, path)),
    printedOfColour: (value, path) =>
      value instanceof Map ? listOf(0, whole(0))([...value.values()], path) : aMap(value, path),
  });
  const { sequence, printedTotal, printedOfColour } = input;
  const counted = totalsOf(sequence);
  const rows = [...printedOfColour].map(([colour, printed]) => ({
    colour,
    printed,
    counted: counted.get(colour) ?? 0,
  }));
  const total = printedTotal === null ? [] : [{ colour: undefined, printed: printedTotal, counted: sequence.ends }];
  return [...total, ...rows].filter((row) => row.printed !== row.counted);
}
