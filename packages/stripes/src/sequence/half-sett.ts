import { check, refuse } from "../refusal/check.js";
import { oneOf, someEnds } from "../refusal/kinds.js";
import { cyclicRuns } from "./cyclic-runs.js";
import type { Pivots } from "./full-sett.js";
import { item } from "./item.js";
import { madeSequence, stripe } from "./made-sequence.js";
import { rotationOf } from "./rotation-of.js";
import { sameStripe } from "./same-stripe.js";
import type { Sequence, Stripe } from "./sequence.js";

export interface HalfSettInput<C> {
  /** One whole repeat, begun at any end of it. */
  readonly sett: Sequence<C>;
  readonly pivots: Exclude<Pivots, "repeating">;
}

/**
 * From pivot to pivot of a sett that reverses, begun at the pivot nearest its beginning.
 *
 * @throws StripeError for a sett that does not reverse, or an odd pivot that would be halved
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * halfSett({ sett: fullSett({ sett: half, pivots: "full count" }), pivots: "full count" }).ends // 16
 */
export function halfSett<C>(input: HalfSettInput<C>): Sequence<C> {
  check("halfSett", input, { sett: someEnds, pivots: oneOf("full count", "half count") });
  const { runs } = cyclicRuns(input.sett);
  const count = runs.length;
  const turned = count % 2 === 0 ? rotationOf(runs, [...runs].reverse(), sameStripe) : null;
  if (turned === null) {
    return refuse("halfSett", "not-symmetrical", ["sett"], {
      expected: "a sett that reads the same backwards from each of two pivots",
      received: `a repeat of ${count} stripes that does not`,
      remedy: "Write it out in full.",
    });
  }
  const first = ((count - 1 + turned) / 2) % (count / 2);
  const half = Array.from({ length: count / 2 + 1 }, (_, index) => item(runs, (first + index) % count));
  if (input.pivots === "half count") {
    for (const index of [0, half.length - 1]) half[index] = halved(item(half, index));
  }
  return madeSequence("halfSett", half);
}

function halved<C>({ colour, ends }: Stripe<C>): Stripe<C> {
  if (ends % 2 === 0) return stripe(colour, ends / 2);
  return refuse("halfSett", "odd-pivot", ["sett"], {
    expected: "an even pivot, to be halved",
    received: ends,
    remedy: "Write the sett with full pivots, or make the pivot even.",
  });
}
