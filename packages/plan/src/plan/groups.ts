import type { Sequence } from "@thrum/stripes";
import { dentsForEnds } from "@thrum/maths";
import type { Job } from "../job/job.js";

/** A group of knots, small enough to be counted at a glance: what is counted on both warps before it is tied. */
export interface TyingGroup {
  readonly group: number;
  readonly stripe: number;
  readonly colour: string;
  readonly ends: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly firstShaft: number;
  readonly lastShaft: number;
  /** Dent of the last end, counted from that of end 1. */
  readonly lastDent: number;
  /** Whether a stripe ends with it. */
  readonly endsStripe: boolean;
}

/** More than can be counted at a glance is cut. */
const MOST_IN_GROUP = 24;

/** Ends from one cut to the next: as many whole repeats as go into a group, or the largest even part of a longer repeat. */
function groupStep(repeat: number): number {
  if (repeat <= MOST_IN_GROUP) return repeat * Math.floor(MOST_IN_GROUP / repeat);
  const parts = Array.from({ length: MOST_IN_GROUP }, (_, at) => MOST_IN_GROUP - at);
  return parts.find((part) => repeat % part === 0) ?? 1;
}

/** The warp in groups, cut at every stripe edge and, inside a stripe, at whole threading repeats. */
export function tyingGroups(warp: Sequence<string>, { endsPerDent, threading }: Job["oldWarp"]): readonly TyingGroup[] {
  const step = groupStep(threading.length);
  const shaftOf = (end: number): number => threading[(end - 1) % threading.length] ?? 0;
  const groups: TyingGroup[] = [];
  warp.runs.forEach(({ colour, ends }, at) => {
    const start = warp.starts[at] ?? 1;
    const stop = start + ends - 1;
    for (let firstEnd = start; firstEnd <= stop;) {
      const lastEnd = Math.min(stop, Math.ceil(firstEnd / step) * step);
      groups.push({
        ...{ group: groups.length + 1, stripe: at + 1, colour, ends: lastEnd - firstEnd + 1, firstEnd, lastEnd },
        firstShaft: shaftOf(firstEnd),
        lastShaft: shaftOf(lastEnd),
        lastDent: dentsForEnds({ ends: lastEnd, endsPerDent }),
        endsStripe: lastEnd === stop,
      });
      firstEnd = lastEnd + 1;
    }
  });
  return groups;
}
