import { check, refuse } from "../refusal/check.js";
import { anyColour, fields, listOf, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import type { Sequence } from "../sequence/sequence.js";
import { madeFromEnds } from "../sequence/made-sequence.js";
import { aSeed, draws } from "./draws.js";

export interface ColourLimits<C> {
  readonly colour: C;
  readonly atLeast: number;
  readonly atMost: number;
}

export interface RandomOrderInput<C> {
  /** The same seed gives the same order everywhere. */
  readonly seed: number;
  readonly ends: number;
  /** Limits on the share of each colour, in ends; a colour stands once. */
  readonly colours: readonly ColourLimits<C>[];
  /** Most neighbouring ends of one colour. */
  readonly longestRun: number;
}

const MOST_RANDOM_ENDS = 100_000;

/**
 * A random order of ends that keeps within limits: every colour within its share, no run longer than the longest.
 *
 * @throws StripeError for limits that no order can keep
 * @example
 * const colours = [{ colour: "ash", atLeast: 20, atMost: 40 }, { colour: "coal", atLeast: 20, atMost: 40 }];
 * randomOrder({ seed: 7, ends: 60, colours, longestRun: 3 }).ends // 60
 */
export function randomOrder<C>(input: RandomOrderInput<C>): Sequence<C> {
  check("randomOrder", input, {
    seed: aSeed,
    ends: whole(1, MOST_RANDOM_ENDS),
    colours: listOf(fields({ colour: anyColour, atLeast: whole(0), atMost: whole(0) })),
    longestRun: whole(1),
  });
  const { ends, colours, longestRun } = input;
  if (new Set(colours.map(({ colour }) => colour)).size < colours.length) {
    refuse("randomOrder", "does-not-fit", "colours", {
      expected: "limits once for each colour",
      received: "a colour that stands twice",
      remedy: "Put its limits together.",
    });
  }
  const below = draws(input.seed);
  const left = counts(input, below);
  let remaining = ends;
  let last = -1;
  let run = 0;
  const order: C[] = [];
  while (remaining > 0) {
    const can = left.map((count, index) => {
      const allowed = count > 0 && (index !== last || run < longestRun) && fits(index, index === last ? run + 1 : 1);
      return allowed ? count : 0;
    });
    let drawn = below(can.reduce((sum, count) => sum + count, 0));
    const next = can.findIndex((count) => (drawn -= count) < 0);
    run = next === last ? run + 1 : 1;
    last = next;
    left[next] = item(left, next) - 1;
    remaining--;
    order.push(item(colours, next).colour);
  }
  return madeFromEnds("randomOrder", order);

  /** Whether the rest can still be laid once `next` is laid: no colour may need more gaps than the others leave. */
  function fits(next: number, length: number): boolean {
    return left.every((count, index) => {
      const own = index === next ? count - 1 : count;
      const others = remaining - 1 - own;
      return own <= others * longestRun + (index === next ? longestRun - length : longestRun);
    });
  }
}

/** Ends of each colour: the least of each, then single ends to colours drawn among those with room. */
function counts<C>({ ends, colours, longestRun }: RandomOrderInput<C>, below: (bound: number) => number): number[] {
  const most = Math.floor((longestRun * (ends + 1)) / (longestRun + 1));
  const caps = colours.map(({ atMost }) => Math.min(atMost, most));
  const given = colours.map(({ atLeast }) => atLeast);
  let rest = ends - given.reduce((sum, count) => sum + count, 0);
  const room = caps.reduce((sum, cap) => sum + cap, 0);
  if (rest < 0 || room < ends || given.some((count, index) => count > item(caps, index))) {
    refuse("randomOrder", "does-not-fit", "colours", {
      expected: `limits that ${ends} ends with runs of at most ${longestRun} can keep`,
      received: `least ${ends - rest} and most ${room} ends in all, at most ${most} of one colour`,
      remedy: "Widen a limit, or allow a longer run.",
    });
  }
  for (; rest > 0; rest--) {
    const open = given.flatMap((count, index) => (count < item(caps, index) ? [index] : []));
    const index = item(open, below(open.length));
    given[index] = item(given, index) + 1;
  }
  return given;
}
