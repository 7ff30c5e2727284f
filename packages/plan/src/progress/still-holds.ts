import { handText } from "../job/hand-text.js";
import type { PlannedGroup, Progress } from "./progress.js";

/** How far ticks made on an earlier plan still hold on the plan as it now is. */
export interface StillHolds {
  /** Groups whose ticks hold: those up to the first that differs. */
  readonly groups: number;
  /** Chains, likewise. */
  readonly chains: number;
  /** Groups and chains ticked on the earlier plan that are "of an older plan". */
  readonly olderGroups: readonly number[];
  readonly olderChains: readonly number[];
}

function alike<T>(then: readonly T[] | undefined, now: readonly T[], isSame: (one: T, other: T) => boolean): number {
  if (then === undefined) return now.length;
  const differs = now.findIndex((one, at) => {
    const other = then[at];
    return other === undefined || !isSame(one, other);
  });
  return differs < 0 ? now.length : differs;
}

const sameGroup = (one: PlannedGroup, other: PlannedGroup): boolean =>
  one.ends === other.ends && handText(one) === handText(other);

/** Numbers from the first that no longer holds to the last of the plan they were ticked on. */
const from = (first: number, last: number): readonly number[] =>
  Array.from({ length: Math.max(0, last - first) }, (_, at) => first + 1 + at);

/**
 * How far the ticks hold: if the job changes, up to the first group (or chain) that differs. The others are kept.
 *
 * @param progress how far the work is
 * @param plan the groups and the ends of the chains as they are planned now
 */
export function stillHolds(
  progress: Progress,
  plan: { readonly groups: readonly PlannedGroup[]; readonly chains: readonly number[] },
): StillHolds {
  const groups = alike(progress.groups, plan.groups, sameGroup);
  const chains = alike(progress.chains, plan.chains, (one, other) => one === other);
  const olderGroups = from(groups, progress.groups?.length ?? groups);
  return { groups, chains, olderGroups, olderChains: from(chains, progress.chains?.length ?? chains) };
}
