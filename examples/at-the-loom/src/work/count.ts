import { isTicked, tickedOff } from "@thrum/plan";
import type { Progress } from "@thrum/plan";
import { loom as words } from "../words/loom.js";
import type { Change } from "./act.js";
import type { Group } from "./loom.js";

/** The first group of the old warp that is not counted; null where all are. */
export function toCount(progress: Progress, groups: readonly Group[]): Group | null {
  return groups.find(({ group }) => !isTicked(progress.counted?.old, group)) ?? null;
}

/** Old threads of the groups that are counted. */
export function threadsCounted(progress: Progress, groups: readonly Group[]): number {
  return groups.reduce(
    (sum, { group, oldThreads }) => sum + (isTicked(progress.counted?.old, group) ? oldThreads : 0),
    0,
  );
}

/** A group counted: as many as planned, or another number, which is kept as odd. */
export function counted(progress: Progress, group: Group, groups: readonly Group[], number = group.oldThreads): Change {
  const { odd = [], ...rest } = progress.counted ?? {};
  const others = odd.filter((one) => one.group !== group.group);
  const own = odd.find((one) => one.group === group.group);
  const isOdd = number !== group.oldThreads;
  const entries = isOdd
    ? [...others, { ...own, group: group.group, old: number }]
    : [...others, ...(own?.new === undefined ? [] : [{ group: group.group, new: own.new }])];
  const next = { ...rest, old: tickedOff(rest.old, group.group), ...(entries.length === 0 ? {} : { odd: entries }) };
  const after = groups.find((one) => one.group > group.group && !isTicked(next.old, one.group));
  return {
    progress: { counted: next },
    here: { open: null },
    says: after === undefined ? words.allCounted : words.group(after.group),
    clicks: 1,
  };
}

/** Both counts of a group, found on going through a stripe whose edge did not agree. */
export function countedBoth(
  progress: Progress,
  group: Group,
  found: { readonly old: number; readonly new: number },
): Change {
  const { odd = [], ...rest } = progress.counted ?? {};
  const others = odd.filter((one) => one.group !== group.group);
  const isOdd = found.old !== group.oldThreads || found.new !== group.ends;
  const entries = isOdd ? [...others, { group: group.group, ...found }] : others;
  const ticks = { old: tickedOff(rest.old, group.group), new: tickedOff(rest.new, group.group) };
  return {
    progress: { counted: { ...rest, ...ticks, ...(entries.length === 0 ? {} : { odd: entries }) } },
    says: words.group(group.group),
  };
}

/** A remark kept at an end. */
export function noted(progress: Progress, end: number, says: string): Change {
  return { progress: { notes: [...(progress.notes ?? []), { end, says }] }, says: words.noted, clicks: 0 };
}
