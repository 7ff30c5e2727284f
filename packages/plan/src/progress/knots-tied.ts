import type { PlannedGroup, Progress } from "./progress.js";
import { isTicked } from "./ticks.js";

/**
 * Knots that are done: those of every group ticked off, and those of the group in work.
 *
 * @param progress how far the work is
 * @param groups the groups as they are planned
 */
export function knotsTied(progress: Progress, groups: readonly PlannedGroup[]): number {
  const { tied, stopped } = progress;
  return groups.reduce((sum, { ends }, at) => {
    if (isTicked(tied, at + 1)) return sum + ends;
    return sum + (stopped?.group === at + 1 ? Math.min(stopped.knot, ends) : 0);
  }, 0);
}
