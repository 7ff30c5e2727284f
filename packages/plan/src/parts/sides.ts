import type { JobSides } from "../job/job.js";
import type { Sley, Threaded } from "../job/loom.js";
import type { Runs } from "../job/runs.js";
import { bareRepeat } from "./laid-heddles.js";
import type { AtSides } from "./table.js";

/** Nothing added, nothing dropped. */
export const NOTHING_ADDED: AtSides = { before: 0, after: 0 };

function greatestCommonMeasure(one: number, other: number): number {
  return other === 0 ? one : greatestCommonMeasure(other, one % other);
}

/** The fewest ends that are both whole repeats and whole dents; one, where threading or sley is written whole. */
export function stepOf(threading: Runs<Threaded> | null, sley: Sley | null): number {
  const repeat = threading === null ? null : bareRepeat(threading);
  const order = sley?.places === undefined ? null : bareRepeat(sley.places);
  const dent = order === null ? 1 : order.reduce((total, ends) => total + ends, 0);
  if (threading === null || repeat === null || (sley?.places !== undefined && order === null)) return 1;
  return (repeat.length / greatestCommonMeasure(repeat.length, dent)) * dent;
}

/** How many ends are added at each side, less than none dropped; null where the numbers given do not make it up. */
export function atSides(given: {
  readonly sides: JobSides;
  readonly more: number;
  readonly step: number;
}): AtSides | null {
  const { sides, more, step } = given;
  if (sides.numbers !== undefined) {
    const { before, after } = sides.numbers;
    return before + after === more ? { before, after } : null;
  }
  if (sides.where === "before end 1") return { before: more, after: 0 };
  if (sides.where === "after the last") return { before: 0, after: more };
  const before = Math.trunc(Math.trunc(more / step) / 2) * step + 0;
  return { before, after: more - before };
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
