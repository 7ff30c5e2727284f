import { type Check, check, refuse } from "../refusal/check.js";
import { listOf, oneOf, someEnds, whole } from "../refusal/kinds.js";
import { madeFromRuns } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { stripesBetween } from "../sequence/stripes-between.js";
import { evenCuts } from "./even-cuts.js";
import { steppedCuts } from "./stepped-cuts.js";

export interface ChainsInput<C> {
  readonly sequence: Sequence<C>;
  /** Most ends of a chain. */
  readonly most: number;
  /**
   * Where one chain may end and the next begin: at a stripe's edge, after every so many ends (1 anywhere, 2 a pair), or
   * after the ends listed, in order, the last of the sequence among them.
   */
  readonly cutAt: "stripe edges" | number | readonly number[];
}

export interface Chain<C> {
  /** From 1, in the order wound. */
  readonly number: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly sequence: Sequence<C>;
}

/**
 * The warp in the fewest chains of at most so many ends, as nearly equal as the places for a cut allow.
 *
 * @throws StripeError for a stripe, or a step, wider than a chain may be
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * chains({ sequence: warp, most: 100, cutAt: "stripe edges" }).map(({ lastEnd }) => lastEnd) // [24, 120]
 */
export function chains<C>(input: ChainsInput<C>): readonly Chain<C>[] {
  check("chains", input, { sequence: someEnds, most: whole(1), cutAt: edgesOrStep });
  const { sequence, most, cutAt } = input;
  const places = placesOf(sequence, cutAt);
  const widest = places === null ? Number(cutAt) : widestBetween(places);
  if (widest > most) {
    refuse("chains", "does-not-fit", ["most"], {
      expected: `at least ${widest}, the ends between two places for a cut`,
      received: most,
      remedy: "Allow longer chains, or more cuts.",
    });
  }
  const cuts = places === null ? steppedCuts(sequence.ends, most, Number(cutAt)) : evenCuts(places, most);
  return cuts.map((lastEnd, index) => {
    const after = cuts[index - 1] ?? 0;
    const part = madeFromRuns(stripesBetween(sequence, after, lastEnd));
    return { number: index + 1, firstEnd: after + 1, lastEnd, sequence: part };
  });
}

/** The places for a cut, from 0 to the last end; null where it may fall after every so many ends. */
function placesOf<C>({ starts, ends }: Sequence<C>, cutAt: ChainsInput<C>["cutAt"]): readonly number[] | null {
  if (typeof cutAt === "number") return null;
  if (cutAt === "stripe edges") return [...starts.map((start) => start - 1), ends];
  const isRising = cutAt.every((end, index) => end > (cutAt[index - 1] ?? 0));
  if (!isRising || cutAt[cutAt.length - 1] !== ends) {
    refuse("chains", "out-of-range", ["cutAt"], {
      expected: `ends in order, the last of them ${ends}`,
      received: cutAt.join(", "),
      remedy: "List the last end of the sequence too.",
    });
  }
  return [0, ...cutAt];
}

function widestBetween(places: readonly number[]): number {
  return places.reduce((so, place, index) => Math.max(so, place - (places[index - 1] ?? 0)), 0);
}

const edgesOrStep: Check = (value, where) =>
  (Array.isArray(value) ? listOf(1, whole(1)) : typeof value === "number" ? whole(1) : oneOf("stripe edges"))(
    value,
    where,
  );
