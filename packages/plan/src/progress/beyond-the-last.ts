import type { Fault } from "../job/fault.js";
import type { Progress } from "./progress.js";
import { highestTick } from "./ticks.js";

type Beyond = Omit<Fault, "function" | "line">;

/**
 * Ticks beyond the last group or chain there is; where their number is not known, none.
 *
 * @param progress how far the work is
 * @param groups how many groups there are
 * @param chains how many chains
 */
export function beyondTheLast(
  progress: Progress,
  groups: number | undefined,
  chains: number | undefined,
): readonly Beyond[] {
  const { counted, wound, winding, tied, stopped, leftOver = [] } = progress;
  const told = (noun: string, last: number | undefined, number: number, ...path: Fault["path"]): readonly Beyond[] => {
    if (last === undefined || number <= last) return [];
    const expected = `${noun}s up to ${String(last)}, the last`;
    const remedy = "Take the tick away, or look whether it is of another job.";
    return [{ code: "out-of-range", path, expected, received: String(number), remedy, params: { atMost: last } }];
  };
  return [
    ...told("group", groups, highestTick(counted?.old), "counted", "old"),
    ...told("group", groups, highestTick(counted?.new), "counted", "new"),
    ...(counted?.odd ?? []).flatMap(({ group }, at) => told("group", groups, group, "counted", "odd", at, "group")),
    ...told("chain", chains, highestTick(wound), "wound"),
    ...told("chain", chains, winding?.chain ?? 0, "winding", "chain"),
    ...told("group", groups, highestTick(tied), "tied"),
    ...told("group", groups, stopped?.group ?? 0, "stopped", "group"),
    ...leftOver.flatMap(({ group }, at) => told("group", groups, group, "leftOver", at, "group")),
  ];
}
