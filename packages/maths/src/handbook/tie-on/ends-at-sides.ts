import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { allTogether, refuse } from "../../engine/refusal.js";
import { greatestCommonMeasure } from "../reed/greatest-common-measure.js";
import { heddlesOfEnds, sideEnds } from "./side-ends.js";
import type { FreeAtSides, SideEnds } from "./side-ends.js";

export interface EndsAtSidesInput extends FreeAtSides {
  readonly oldEnds: number;
  readonly newEnds: number;
  /** The shafts of one threading repeat; end 1 is its first. */
  readonly threading: readonly number[];
}

/** How a wider or narrower warp is tied on: whole threading repeats and whole dents at each side. */
export interface EndsAtSides {
  readonly verdict: "fits" | "check" | "does not fit";
  readonly difference: number;
  /** The fewest ends that are both whole repeats and whole dents. */
  readonly step: number;
  readonly sides: readonly [SideEnds, SideEnds];
  /** The nearest numbers of ends that leave no repeat and no dent open, below and above; the same where this one does. */
  readonly nearest: readonly [below: number, above: number];
  readonly says: string;
}

function checkCounts(input: EndsAtSidesInput): void {
  const { emptyDents, spareHeddles, ...counts } = Object(input) as EndsAtSidesInput;
  const declared = {
    oldEnds: whole("ends", "of the old warp", { atLeast: 1, atMost: 1_000_000 }),
    newEnds: whole("ends", "of the new warp", { atLeast: 1, atMost: 1_000_000 }),
    threading: listOf(whole("shafts", "of one threading repeat, in turn", { atLeast: 1, atMost: 1000 })),
    endsPerDent: whole("ends in each dent", "as sleyed", { atLeast: 1 }),
  };
  const dent = whole("dents", "still empty at that side", { atLeast: 0 });
  const spare = listOf(whole("heddles", "that hang outside the outermost threaded end", { atLeast: 0 }));
  allTogether(
    () => readInputs("endsAtSides", declared, counts),
    () => readInputs(["endsAtSides", "emptyDents"], { beforeFirst: dent, afterLast: dent }, emptyDents),
    () => readInputs(["endsAtSides", "spareHeddles"], { beforeFirst: spare, afterLast: spare }, spareHeddles),
  );
  const shafts = Math.max(...counts.threading);
  for (const [field, on] of Object.entries(spareHeddles) as [string, readonly number[]][]) {
    if (on.length >= shafts) continue;
    const expected = `a number for each of ${String(shafts)} shafts`;
    const remedy = "Count the spare heddles of every shaft, also where there are none.";
    refuse("missing", ["endsAtSides", "spareHeddles", field], expected, `${String(on.length)} numbers`, remedy);
  }
}

/**
 * Where the ends that a new warp has more or fewer than the old one are added or dropped: half at each side in whole
 * threading repeats and whole dents, the odd one and what is left over after the last end; with the heddles and dents of each
 * side held against those that can be used there.
 *
 * @param input both warps, the threading, the sley, and what is free at each side
 * @throws QuantityError for a field that is missing, unknown or of another kind
 * @source common practice, no source
 * @example
 * const free = { emptyDents: { beforeFirst: 20, afterLast: 20 }, spareHeddles: { beforeFirst: [5, 5, 5, 5], afterLast: [5, 5, 5, 5] } };
 * endsAtSides({ oldEnds: 182, newEnds: 206, threading: [1, 2, 3, 4], endsPerDent: 2, ...free }).sides[0].ends // 12
 */
export function endsAtSides(input: EndsAtSidesInput): EndsAtSides {
  checkCounts(input);
  const { oldEnds, newEnds, ...given } = input;
  const { threading, endsPerDent } = given;
  const shafts = given.spareHeddles.beforeFirst.length;
  const difference = newEnds - oldEnds;
  const step = (threading.length / greatestCommonMeasure(threading.length, endsPerDent)) * endsPerDent;
  const steps = Math.trunc(difference / step);
  // Nothing added at a side is plain 0, never -0.
  const before = Math.trunc(steps / 2) * step + 0;
  const after = difference - before;
  const heddles = (first: number, last: number): number[] => heddlesOfEnds(threading, shafts, first, last);
  const atFirst = before > 0 ? heddles(1 - before, 0) : heddles(1, -before);
  const [inner, outer] = [oldEnds, oldEnds + after].sort((a, b) => a - b) as [number, number];
  const sides = Object.freeze([
    sideEnds("before end 1", before, atFirst, given),
    sideEnds("after the last end", after, heddles(inner + 1, outer), given),
  ] as const);
  const open = difference % step !== 0;
  const below = oldEnds + Math.floor(difference / step) * step;
  const nearest = Object.freeze([below, open ? below + step : below] as const);
  const short = sides.some(({ shortages }) => shortages.length > 0);
  return Object.freeze({
    verdict: short ? "does not fit" : open ? "check" : "fits",
    difference,
    step,
    sides,
    nearest,
    says: inWords(difference, sides, open, step, nearest),
  });
}

function inWords(
  difference: number,
  [before, after]: readonly [SideEnds, SideEnds],
  open: boolean,
  step: number,
  [below, above]: readonly [number, number],
): string {
  if (difference === 0) return "Both warps have as many ends: nothing is added or dropped.";
  const verb = difference > 0 ? "Add" : "Drop";
  const ends = (n: number): string => `${String(Math.abs(n))} ${Math.abs(n) === 1 ? "end" : "ends"}`;
  const sentence = `${verb} ${ends(before.ends)} before end 1 and ${ends(after.ends)} after the last.`;
  const nearest = `${String(below)} or ${String(above)} ends would`;
  const rest = open ? ` The last repeat or dent stays open: ${nearest} close it, ${String(step)} ends a step.` : "";
  return [sentence + rest, ...before.shortages, ...after.shortages].join(" ");
}
