import type { Sequence } from "@thrum/stripes";
import { dentsForEnds } from "@thrum/maths";
import type { Job } from "../job/job.js";

/** A stripe edge as the weaver meets it: where its last end must stand on the old warp. */
export interface JoiningRow {
  readonly stripe: number;
  readonly colour: string;
  readonly ends: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  /** Dent of the last end, counted from that of end 1. */
  readonly dent: number;
  /** Place of the last end in the threading repeat, from 1, and the shaft it is threaded on. */
  readonly placeInRepeat: number;
  readonly shaft: number;
  /** Whether the edge falls inside a dent or a repeat, where a miscount is harder to see. */
  readonly splitsDent: boolean;
  readonly splitsRepeat: boolean;
}

/** The stripes in the order of the ends, each with the place of its last end on the old warp. */
export function joiningRows(warp: Sequence<string>, { endsPerDent, threading }: Job["oldWarp"]): readonly JoiningRow[] {
  return warp.runs.map(({ colour, ends }, at) => {
    const firstEnd = warp.starts[at] ?? 1;
    const lastEnd = firstEnd + ends - 1;
    const placeInRepeat = ((lastEnd - 1) % threading.length) + 1;
    const isLast = at === warp.runs.length - 1;
    return {
      ...{ stripe: at + 1, colour, ends, firstEnd, lastEnd, placeInRepeat },
      dent: dentsForEnds({ ends: lastEnd, endsPerDent }),
      shaft: threading[placeInRepeat - 1] ?? 0,
      splitsDent: !isLast && lastEnd % endsPerDent !== 0,
      splitsRepeat: !isLast && placeInRepeat !== threading.length,
    };
  });
}
