import { check, refuse } from "../refusal/check.js";
import { oneOf, someEnds, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { madeSequence, MOST_ENDS, stripe } from "../sequence/made-sequence.js";
import type { Sequence, Stripe } from "../sequence/sequence.js";
import { stripesBetween } from "../sequence/stripes-between.js";

export interface FittedSidesInput<C> {
  readonly sequence: Sequence<C>;
  /** Ends wanted in all: those of the old warp. */
  readonly ends: number;
  /** Ends come and go in whole steps: 1, a pair, a dent, a threading repeat. */
  readonly step: number;
  /** The side that gains or loses the odd step. */
  readonly oddStep: "left" | "right";
}

export interface FittedSides<C> {
  readonly sequence: Sequence<C>;
  /** Ends added before end 1; fewer than 0 were dropped. */
  readonly left: number;
  /** Ends added after the last; fewer than 0 were dropped. */
  readonly right: number;
}

/**
 * The sequence with ends added or dropped at its two sides; added ends continue the outermost stripes.
 *
 * @throws StripeError if the difference is no whole number of steps
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * fittedSides({ sequence: warp, ends: 144, step: 4, oddStep: "left" }).left // 12
 */
export function fittedSides<C>(input: FittedSidesInput<C>): FittedSides<C> {
  check("fittedSides", input, {
    sequence: someEnds,
    ends: whole(1, MOST_ENDS),
    step: whole(1),
    oddStep: oneOf("left", "right"),
  });
  const { sequence: before, ends, step, oddStep } = input;
  const steps = (ends - before.ends) / step;
  if (!Number.isInteger(steps)) {
    refuse("fittedSides", "does-not-fit", ["ends"], {
      expected: `${before.ends} ends and a whole number of steps of ${step}`,
      received: ends,
      remedy: "Choose the nearest that fits, or a smaller step.",
    });
  }
  const half = Math.trunc(steps / 2);
  const left = (oddStep === "left" ? steps - half : half) * step;
  const right = ends - before.ends - left;
  const kept = stripesBetween(before, Math.max(0, -left), before.ends + Math.min(0, right));
  const { runs } = before;
  const added = (ends: number, index: number): Stripe<C>[] =>
    ends > 0 ? [stripe(item(runs, index).colour, ends)] : [];
  const stripes = [...added(left, 0), ...kept, ...added(right, runs.length - 1)];
  return { sequence: madeSequence("fittedSides", stripes), left, right };
}
