import type { JobSides } from "../job/job.js";
import type { Sley, Threaded } from "../job/loom.js";
import type { Runs } from "../job/runs.js";
import { bareRepeat } from "./laid-heddles.js";
import type { AtSides } from "./table.js";

export type Where = NonNullable<JobSides["where"]>;

export const NOTHING_ADDED: AtSides = { before: 0, after: 0 };

function commonMeasure(one: number, other: number): number {
  return other === 0 ? one : commonMeasure(other, one % other);
}

/** The fewest ends that are whole repeats and whole dents; null where threading or sley is written whole: no step. */
export function stepOfSides(threading: Runs<Threaded>, sley: Sley | null): number | null {
  const repeat = bareRepeat(threading);
  const order = sley?.places === undefined ? [1] : bareRepeat(sley.places);
  if (repeat === null || order === null) return null;
  const ends = order.reduce((sum, one) => sum + one, 0);
  return (repeat.length / commonMeasure(repeat.length, ends)) * ends;
}

/**
 * Where ends are added or dropped: at one side, or half each in whole steps, the odd step and what is no whole step
 * after the last.
 */
export function sidesOf(where: Where, difference: number, step: number | null): AtSides {
  const half = Math.trunc(Math.trunc(difference / (step ?? 1)) / 2) * (step ?? 1);
  const before = where === "both" ? half : where === "before end 1" ? difference : 0;
  // Nothing is plain 0, never -0.
  return { before: before + 0, after: difference - before + 0 };
}

/** The two numbers of ends that leave no step open, counted from end 1; the same where this one leaves none. */
export function closingEnds(ends: number, step: number): readonly [below: number, above: number] {
  const below = ends - (ends % step);
  return [below, below === ends ? ends : below + step];
}

/** How often a repeat goes into so many places, and what stays open. */
export function timesOfRepeat(repeat: number, places: number): { readonly times: number; readonly open: number } {
  return { times: Math.floor(places / repeat), open: places % repeat };
}
