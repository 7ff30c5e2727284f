import { type Check, check, refuse } from "../refusal/check.js";
import { listOf, someEnds, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import type { Sequence } from "../sequence/sequence.js";

export interface WindingListInput<C> {
  readonly sequence: Sequence<C>;
  /** Threads wound together, all of the stripe's colour or blend; a list says it for each stripe. */
  readonly threads: number | readonly number[];
  /** A counting tie after every so many ends, counted from the first end of the sequence; a list names those ends. */
  readonly tieEvery: number | readonly number[];
}

export interface WoundStripe<C> {
  /** Number of the stripe, from 1. */
  readonly stripe: number;
  readonly colour: C;
  readonly ends: number;
  /** Ways from one end peg to the other, the last one perhaps with fewer threads. */
  readonly passes: number;
  /** Whole ways there and back. */
  readonly rounds: number;
  /** Where the yarn stands when the stripe is wound, and where the next colour begins. */
  readonly endsAt: "near peg" | "far peg";
  /** Threads to lay aside for the last pass, so that an odd stripe comes out. */
  readonly dropForLastPass: number;
  /** Ends wound so far, this stripe included. */
  readonly runningTotal: number;
  /** Counting ties within this stripe: after which of its ends, and in which pass that end is wound. */
  readonly ties: readonly { readonly total: number; readonly endOfStripe: number; readonly pass: number }[];
  /** What to do that an even stripe would not ask for. */
  readonly todo: readonly string[];
}

/**
 * Every stripe as it is wound with several threads at once, begun at the near peg.
 *
 * @throws StripeError for more threads than ends
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * windingList({ sequence: warp, threads: 2, tieEvery: 20 })[0].rounds // 6
 */
export function windingList<C>(input: WindingListInput<C>): readonly WoundStripe<C>[] {
  check("windingList", input, { sequence: someEnds, threads: oneOrList, tieEvery: oneOrList });
  const { sequence, tieEvery } = input;
  const threadsOf = typeof input.threads === "number" ? sequence.runs.map(() => Number(input.threads)) : input.threads;
  if (threadsOf.length !== sequence.runs.length) {
    refuse("windingList", "out-of-range", ["threads"], {
      expected: `a number for each of ${sequence.runs.length} stripes`,
      received: threadsOf.length,
      remedy: "Give one number for all stripes, or one for each.",
    });
  }
  const { threads } = input;
  if (typeof threads === "number" && threads > sequence.ends) {
    refuse("windingList", "out-of-range", ["threads"], {
      expected: `at most the ${sequence.ends} ends of the sequence`,
      received: threads,
      remedy: "Wind fewer threads together.",
    });
  }
  let passesBefore = 0;
  return sequence.runs.map(({ colour, ends }, index) => {
    const before = item(sequence.starts, index) - 1;
    const threads = item(threadsOf, index);
    const passes = Math.ceil(ends / threads);
    passesBefore += passes;
    const endsAt = passesBefore % 2 === 0 ? "near peg" : "far peg";
    const dropForLastPass = passes * threads - ends;
    const ties = tiedEnds(tieEvery, before, before + ends).map((total) => {
      const endOfStripe = total - before;
      return { total, endOfStripe, pass: Math.ceil(endOfStripe / threads) };
    });
    const todo = [
      ...(dropForLastPass > 0 ? [`lay ${dropForLastPass} of ${threads} threads aside for the last pass`] : []),
      ...(endsAt === "far peg"
        ? [index + 1 < sequence.runs.length ? "change colour at the far peg" : "end at the far peg"]
        : []),
    ];
    const counted = { passes, rounds: Math.floor(passes / 2), endsAt, dropForLastPass } as const;
    return { stripe: index + 1, colour, ends, ...counted, runningTotal: before + ends, ties, todo };
  });
}

/** The ends after which a tie stands, past one end and up to another. */
function tiedEnds(tieEvery: WindingListInput<unknown>["tieEvery"], after: number, upTo: number): readonly number[] {
  if (typeof tieEvery !== "number") return tieEvery.filter((end) => end > after && end <= upTo);
  const ends: number[] = [];
  for (let end = after - (after % tieEvery) + tieEvery; end <= upTo; end += tieEvery) ends.push(end);
  return ends;
}

const oneOrList: Check = (value, where) => (Array.isArray(value) ? listOf(0, whole(1)) : whole(1))(value, where);
