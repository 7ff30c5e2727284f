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
    colours: listOf(1, fields({ colour: anyColour, atLeast: whole(0), atMost: whole(0) })),
    longestRun: whole(1),
  });
  const { ends, colours, longestRun } = input;
  const below = draws(input.seed);
  const left = counts(input, below);
  let last = -1;
  let run = 0;
  const order = Array.from({ length: ends }, (_, laid) => {
    const weights = left.map((count, index) => (count > 0 && canFollow(index, ends - laid - 1) ? count : 0));
    const next = drawn(weights, below);
    run = next === last ? run + 1 : 1;
    last = next;
    left[next] = item(left, next) - 1;
    return item(colours, next).colour;
  });
  return madeFromEnds("randomOrder", order);

  /** Whether a colour may come next and the rest still be laid: none may need more gaps than the others leave. */
  function canFollow(next: number, rest: number): boolean {
    const length = next === last ? run + 1 : 1;
    if (length > longestRun) return false;
    return left.every((count, index) => {
      const own = index === next ? count - 1 : count;
      return own <= (rest - own + 1) * longestRun - (index === next ? length : 0);
    });
  }
}

/** Ends of each colour: the least of each, then single ends to colours drawn among those with room. */
function counts<C>({ ends, colours, longestRun }: RandomOrderInput<C>, below: (bound: number) => number): number[] {
  const most = Math.floor((longestRun * (ends + 1)) / (longestRun + 1));
  const caps = colours.map(({ atMost }) => Math.min(atMost, most));
  const given = colours.map(({ atLeast }) => atLeast);
  const [least, room] = [sum(given), sum(caps)];
  const twice = new Set(colours.map(({ colour }) => colour)).size < colours.length;
  if (twice || least > ends || room < ends || given.some((count, index) => count > item(caps, index))) {
    refuse("randomOrder", "does-not-fit", ["colours"], {
      expected: "each colour once, in limits that can be kept",
      received: `room for ${least} to ${room} ends`,
      remedy: "Widen a limit, or allow a longer run.",
    });
  }
  for (let rest = ends - least; rest > 0; rest--) {
    const open = given.map((count, index) => (count < item(caps, index) ? 1 : 0));
    const index = drawn(open, below);
    given[index] = item(given, index) + 1;
  }
  return given;
}

/** An index drawn with these weights. */
function drawn(weights: readonly number[], below: (bound: number) => number): number {
  let place = below(sum(weights));
  return weights.findIndex((weight) => (place -= weight) < 0);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((one, other) => one + other, 0);
}
