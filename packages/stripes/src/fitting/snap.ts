import { check, refuse } from "../refusal/check.js";
import { someEnds, whole } from "../refusal/kinds.js";
import { edges } from "../sequence/edges.js";
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
  const {
    sequence: { runs, ends },
    step,
  } = input;
  refuseBrokenStep("snap", ends, step);
  const least = Math.max(1, Math.ceil(input.smallest / step));
  if (least * runs.length > ends / step) {
    refuse("snap", "does-not-fit", "smallest", {
      expected: `${runs.length} stripes of ${least * step} ends within ${ends}`,
      received: input.smallest,
      remedy: "Take a smaller step, or leave a stripe out.",
    });
  }
  const before = edges(input.sequence);
  const after = mirrored(runs, 0, runs.length)
    ? mirroredEdges(before, step, least)
    : nearestEdges(before, step, least, ends / step);
  const moved = before.flatMap((from, index) => {
    const to = item(after, index);
    return from === to ? [] : [{ stripe: index + 1, from, to }];
  });
  return {
    sequence: madeSequence(
      "snap",
      runs.map(({ colour }, index) => stripe(colour, item(after, index) - (after[index - 1] ?? 0))),
    ),
    moved,
    change: moved.reduce((sum, { from, to }) => sum + Math.abs(to - from), 0),
  };
}

/** Edges but the last, and the last; `places` are the steps of the whole. */
function nearestEdges(before: readonly number[], step: number, least: number, places: number): readonly number[] {
  const inner = before.slice(0, -1);
  const room = places - least * before.length;
  return [...moved(inner, step, least, room), places * step];
}

function mirroredEdges(before: readonly number[], step: number, least: number): readonly number[] {
  const ends = item(before, before.length - 1);
  const left = before.slice(0, (before.length - 1) / 2);
  const room = Math.floor((ends / step - least) / 2) - least * left.length;
  const places = moved(left, step, least, room);
  return [...places, ...places.map((edge) => ends - edge).reverse(), ends];
}

function moved(edgesBefore: readonly number[], step: number, least: number, room: number): readonly number[] {
  const targets = edgesBefore.map((edge, index) => edge / step - least * (index + 1));
  return leastMoves(targets, room).map((place, index) => (place + least * (index + 1)) * step);
}
