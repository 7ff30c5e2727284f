import type { Hand } from "../job/runs.js";
import { handOf } from "./laid-stripes.js";
import type { LaidStripe } from "./laid-stripes.js";

/** Ends counted, wound, tied and ticked together. */
export interface Group extends Hand {
  /** From end 1, in every order of tying. */
  readonly group: number;
  readonly stripe: number;
  readonly ends: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  /** Whether its stripe ends with it. */
  readonly endsStripe: boolean;
}

/**
 * Groups of so many ends, begun afresh at every stripe, its last one smaller; of a blend whole hands, one at least.
 *
 * @param ends of a group; null where a stripe is a group
 */
export function groupsOf(stripes: readonly LaidStripe[], ends: number | null): readonly Group[] {
  const groups: Group[] = [];
  stripes.forEach((stripe, at) => {
    const hand = stripe.yarns.length;
    const most = ends === null ? stripe.ends : Math.max(1, Math.floor(ends / hand)) * hand;
    for (let firstEnd = stripe.firstEnd; firstEnd <= stripe.lastEnd; firstEnd += most) {
      const lastEnd = Math.min(stripe.lastEnd, firstEnd + most - 1);
      const numbers = { ends: lastEnd - firstEnd + 1, firstEnd, lastEnd };
      const endsStripe = lastEnd === stripe.lastEnd;
      groups.push({ group: groups.length + 1, stripe: at + 1, ...handOf(stripe), ...numbers, endsStripe });
    }
  });
  return groups;
}
