import type { Sequence } from "@thrum/stripes";
import { dentsForEnds } from "@thrum/maths";
import type { Job } from "../job/job.js";

/** A group of ends of the old warp, small enough to be counted at a glance. */
export interface OldGroup {
  readonly group: number;
  readonly ends: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly firstShaft: number;
  readonly lastShaft: number;
}

/** A group of knots, small enough to be counted at a glance: what is counted on both warps before it is tied. */
export interface TyingGroup extends OldGroup {
  readonly stripe: number;
  readonly colour: string;
  /** Dent of the last end, counted from that of end 1. */
  readonly lastDent: number;
  /** Whether a stripe ends with it. */
  readonly endsStripe: boolean;
}

/** More than can be counted at a glance is cut. */
const MOST_IN_GROUP = 24;

/** A group may end after so many ends or a multiple of them: a whole repeat, or the largest even part of a longer one. */
function cutAfter(repeat: number): number {
  if (repeat <= MOST_IN_GROUP) return repeat;
  const parts = Array.from({ length: MOST_IN_GROUP }, (_, at) => MOST_IN_GROUP - at);
  return parts.find((part) => repeat % part === 0) ?? 1;
}

/** The groups of the ends from one to another: few enough to count are left whole, more are cut at whole repeats. */
function groupsBetween(start: number, stop: number, threading: readonly number[]): Omit<OldGroup, "group">[] {
  const unit = cutAfter(threading.length);
  const shaftOf = (end: number): number => threading[(end - 1) % threading.length] ?? 0;
  const isFew = stop - start < MOST_IN_GROUP;
  const groups: Omit<OldGroup, "group">[] = [];
  for (let firstEnd = start; firstEnd <= stop;) {
    const furthest = Math.floor((firstEnd + MOST_IN_GROUP - 1) / unit) * unit;
    const lastEnd = isFew ? stop : Math.min(stop, furthest);
    const shafts = { firstShaft: shaftOf(firstEnd), lastShaft: shaftOf(lastEnd) };
    groups.push({ ends: lastEnd - firstEnd + 1, firstEnd, lastEnd, ...shafts });
    firstEnd = lastEnd + 1;
  }
  return groups;
}

/** The old warp in groups, as it is counted before anything is cut. */
export function oldGroups({ ends, threading }: Pick<Job["oldWarp"], "ends" | "threading">): readonly OldGroup[] {
  return groupsBetween(1, ends, threading).map((one, at) => ({ group: at + 1, ...one }));
}

/** How the old warp stands in reed and heddles. */
type Sleyed = Pick<Job["oldWarp"], "endsPerDent" | "threading">;

/** The new warp in groups, cut at every stripe edge too. */
export function tyingGroups(warp: Sequence<string>, { endsPerDent, threading }: Sleyed): readonly TyingGroup[] {
  const groups = warp.runs.flatMap(({ colour, ends }, at) => {
    const start = warp.starts[at] ?? 1;
    const stop = start + ends - 1;
    return groupsBetween(start, stop, threading).map((one) => ({
      ...{ ...one, stripe: at + 1, colour },
      lastDent: dentsForEnds({ ends: one.lastEnd, endsPerDent }),
      endsStripe: one.lastEnd === stop,
    }));
  });
  return groups.map((one, at) => ({ group: at + 1, ...one }));
}
