import type { WoundStripe } from "@thrum/stripes";
import type { WarpPlan } from "../plan/warp-plan.js";
import { plainText } from "./clean.js";
import { extraLines } from "./extra-lines.js";
import { table, wrapped } from "./layout.js";

/** Rounds there and back, and a half where the last way is not gone back. */
export function roundsText({ passes, rounds }: WoundStripe<string>): string {
  if (passes % 2 === 0) return String(rounds);
  return rounds === 0 ? "1/2" : `${String(rounds)} 1/2`;
}

/** Counting ties and whatever else falls within the stripe. */
export function meanwhileText({ ties, todo }: WoundStripe<string>): string {
  const counts = ties.map(({ total }) => String(total)).join(", ");
  return [...(counts === "" ? [] : [`tie the count at ${counts}`]), ...todo].join("; ");
}

function woundRow(stripe: WoundStripe<string>): readonly (string | number)[] {
  const { colour, ends, runningTotal } = stripe;
  return [plainText(colour), ends, roundsText(stripe), runningTotal, meanwhileText(stripe)];
}

/** Without it no chain can be tied in order. */
export const LEASE =
  "Make the lease at the end of the chain that will be tied, tie it up before the chain leaves its pegs, and label each chain with its number and its first end. (Source: common practice, no source.)";

/** How each chain is wound. */
export function windingLines(plan: WarpPlan): readonly string[] {
  const { winding, threadsTogether } = plan;
  const threads = threadsTogether === 1 ? "Wind 1 thread" : `Wind ${String(threadsTogether)} threads together`;
  return [
    ...wrapped(`${threads}. Begin each chain at the near peg; a round is there and back. ${LEASE}`),
    ...winding.flatMap(({ chain, firstEnd, lastEnd, ends, stripes }) => [
      "",
      `Chain ${String(chain)}: ends ${String(firstEnd)} to ${String(lastEnd)}, ${String(ends)} in all`,
      ...table(["colour", "ends", "rounds", "so far", "meanwhile"], stripes.map(woundRow)),
    ]),
    ...extraLines(plan),
  ];
}
