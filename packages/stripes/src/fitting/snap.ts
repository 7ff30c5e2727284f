import { check, refuse } from "../refusal/check.js";
import { someEnds, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { madeSequence, stripe } from "../sequence/made-sequence.js";
import { mirrored } from "../sequence/mirrored.js";
import type { Sequence } from "../sequence/sequence.js";
import { leastMoves } from "./least-moves.js";
import { refuseBrokenStep } from "./refuse-broken-step.js";

export interface SnapInput<C> {
  readonly sequence: Sequence<C>;
  /** Ends of a dent, pair, section or threading repeat: every edge shall fall on a multiple. */
  readonly step: number;
  /** Fewest ends of a stripe; none vanishes. */
  readonly smallest: number;
}

export interface MovedEdge {
  /** Number of the stripe, from 1, whose last end moved. */
  readonly stripe: number;
  readonly from: number;
  readonly to: number;
}

export interface SnappedSequence<C> {
  readonly sequence: Sequence<C>;
  readonly moved: readonly MovedEdge[];
  /** Ends by which the edges moved, taken together: no other choice moves fewer. */
  readonly change: number;
}

/**
 * The sequence with its edges moved to whole steps by the least change in all; a mirrored one by the least that
 * keeps it mirrored. An edge halfway between two steps goes down, in the right half of a mirrored sequence up.
 *
 * @throws StripeError if the ends are no multiple of the step, or too few for every stripe
 * @example
 * const napkin = sequence([{ colour: "ash", ends: 45 }, { colour: "coal", ends: 35 }]);
 * snap({ sequence: napkin, step: 4, smallest: 4 }).moved // [{ stripe: 1, from: 45, to: 44 }]
 */
export function snap<C>(input: SnapInput<C>): SnappedSequence<C> {
  check("snap", input, { sequence: someEnds, step: whole(1), smallest: whole(0) });
  const { sequence, step, smallest } = input;
  const { runs, ends } = sequence;
  refuseBrokenStep("snap", ends, step);
  const least = Math.max(1, Math.ceil(smallest / step));
  const steps = ends / step;
  if (least * runs.length > steps) {
    refuse("snap", "does-not-fit", ["smallest"], {
      expected: `${runs.length} stripes of ${least * step} ends within ${ends}`,
      received: smallest,
      remedy: "Leave a stripe out.",
    });
  }
  const before = sequence.starts.slice(1).map((start) => start - 1);
  const keepsMirrored = mirrored(runs, 0, runs.length);
  const free = keepsMirrored ? before.slice(0, before.length / 2) : before;
  // Least widths set aside, the edges need only keep their order.
  const room = (keepsMirrored ? Math.floor((steps - least) / 2) : steps - least) - least * free.length;
  const targets = free.map((edge, index) => edge / step - least * (index + 1));
  const placed = leastMoves(targets, room).map((place, index) => (place + least * (index + 1)) * step);
  const after = keepsMirrored ? [...placed, ...placed.map((edge) => ends - edge).reverse()] : placed;
  const moved = before
    .map((from, index) => ({ stripe: index + 1, from, to: item(after, index) }))
    .filter(({ from, to }) => from !== to);
  return {
    sequence: madeSequence(
      "snap",
      runs.map(({ colour }, index) => stripe(colour, (after[index] ?? ends) - (after[index - 1] ?? 0))),
    ),
    moved,
    change: moved.reduce((sum, { from, to }) => sum + Math.abs(to - from), 0),
  };
}
