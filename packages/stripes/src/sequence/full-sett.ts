import { check, refuse } from "../refusal/check.js";
import { oneOf, someEnds } from "../refusal/kinds.js";
import { item } from "./item.js";
import { join } from "./join.js";
import { pivot } from "./pivot.js";
import type { Sequence } from "./sequence.js";
import { slice } from "./slice.js";

/** How a pattern sett is to be read: its first and last stripe counted whole, counted half, or no pivots at all. */
export type Pivots = "full count" | "half count" | "repeating";

export interface FullSettInput<C> {
  /** The sett as written, from pivot to pivot, or entire if it repeats straight on. */
  readonly sett: Sequence<C>;
  /** Never guessed: one and the same count gives two cloths. */
  readonly pivots: Pivots;
}

/**
 * One whole repeat of a sett, beginning with its first pivot.
 *
 * @throws StripeError for a half sett of a single stripe, which has no second pivot
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * fullSett({ sett: half, pivots: "half count" }).ends // 32
 */
export function fullSett<C>(input: FullSettInput<C>): Sequence<C> {
  check("fullSett", input, { sett: someEnds, pivots: oneOf("full count", "half count", "repeating") });
  const { sett, pivots } = input;
  if (pivots === "repeating") return sett;
  const { runs, ends } = sett;
  if (runs.length === 1) {
    refuse("fullSett", "does-not-fit", "sett", {
      expected: "a half sett of two stripes or more",
      received: `one stripe of ${ends} ends`,
      remedy: 'Cloth of one colour has no pivots: say "repeating".',
    });
  }
  const first = slice({ sequence: sett, after: 0, upTo: item(runs, 0).ends });
  const last = slice({ sequence: sett, after: ends - item(runs, runs.length - 1).ends, upTo: ends });
  const turned = pivot(pivots === "full count" ? sett : join([first, sett, last]));
  const firstPivot = item(turned.runs, 0).ends;
  return slice({ sequence: turned, after: 0, upTo: turned.ends - firstPivot });
}
