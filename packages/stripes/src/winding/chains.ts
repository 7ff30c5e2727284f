import { type Check, check, refuse } from "../refusal/check.js";
import { oneOf, someEnds, whole } from "../refusal/kinds.js";
import { madeFromRuns } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { stripesBetween } from "../sequence/stripes-between.js";
import { evenCuts } from "./even-cuts.js";
import { steppedCuts } from "./stepped-cuts.js";

export interface ChainsInput<C> {
  readonly sequence: Sequence<C>;
  /** Most ends of a chain. */
  readonly most: number;
  /** Where one chain may end and the next begin: at a stripe's edge, or after every so many ends (1 anywhere, 2 a pair). */
  readonly cutAt: "stripe edges" | number;
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
  const atEdges = cutAt === "stripe edges";
  const widest = atEdges ? sequence.runs.reduce((so, { ends }) => Math.max(so, ends), 0) : cutAt;
  if (widest > most) {
    refuse("chains", "does-not-fit", ["most"], {
      expected: `at least ${widest}, the ends between two places for a cut`,
      received: most,
      remedy: "Allow longer chains, or more cuts.",
    });
  }
  const cuts = atEdges
    ? evenCuts([...sequence.starts.map((start) => start - 1), sequence.ends], most)
    : steppedCuts(sequence.ends, most, cutAt);
  return cuts.map((lastEnd, index) => {
    const after = cuts[index - 1] ?? 0;
    const part = madeFromRuns(stripesBetween(sequence, after, lastEnd));
    return { number: index + 1, firstEnd: after + 1, lastEnd, sequence: part };
  });
}

const edgesOrStep: Check = (value, path) => (typeof value === "number" ? whole(1) : oneOf("stripe edges"))(value, path);
