import { frozen } from "../../engine/frozen.js";

/** Heddles that can still be used: those that hang outside the outermost threaded end, shaft by shaft. */
export interface SpareHeddles {
  readonly beforeFirst: readonly number[];
  readonly afterLast: readonly number[];
}

/** What the loom still has to offer at each side of the old warp. */
export interface FreeAtSides {
  readonly endsPerDent: number;
  /** Dents of the reed still empty outside the old warp, at end 1 and at the last end. */
  readonly emptyDents: { readonly beforeFirst: number; readonly afterLast: number };
  /** For each shaft, from shaft 1. */
  readonly spareHeddles: SpareHeddles;
}

/** What is to be done at one side of the old warp. */
export interface SideEnds {
  readonly side: "before end 1" | "after the last end";
  /** Ends added; below zero, ends dropped. */
  readonly ends: number;
  /** Dents taken; below zero, dents left empty. */
  readonly dents: number;
  /** Heddles taken on each shaft, from shaft 1; below zero, heddles left empty. */
  readonly heddles: readonly number[];
  /** Still free at this side afterwards; below zero, so many are lacking. */
  readonly dentsLeft: number;
  readonly heddlesLeft: readonly number[];
  readonly shortages: readonly string[];
}

/** Shafts of ends first to last, counted from end 1 = 1; end 0 is the one before it. */
export function heddlesOfEnds(threading: readonly number[], shafts: number, first: number, last: number): number[] {
  const on = Array.from({ length: shafts }, () => 0);
  const { length } = threading;
  for (let end = first; end <= last; end += 1) {
    const shaft = threading[(((end - 1) % length) + length) % length] ?? 0;
    on[shaft - 1] = (on[shaft - 1] ?? 0) + 1;
  }
  return on;
}

/** One side, with what is short there and its remedy. */
export function sideEnds(name: SideEnds["side"], ends: number, heddlesUsed: number[], given: FreeAtSides): SideEnds {
  const key = name === "before end 1" ? "beforeFirst" : "afterLast";
  const sign = Math.sign(ends);
  const dents = sign * Math.ceil(Math.abs(ends) / given.endsPerDent);
  const heddles = given.spareHeddles[key].map((_, at) =>
    ends < 0 ? 0 - (heddlesUsed[at] ?? 0) : (heddlesUsed[at] ?? 0),
  );
  const heddlesLeft = given.spareHeddles[key].map((spare, at) => spare - (heddles[at] ?? 0));
  const dentsLeft = given.emptyDents[key] - dents;
  const short = heddlesLeft.flatMap((left, at) => (left < 0 ? [`${String(-left)} on shaft ${String(at + 1)}`] : []));
  const shortages = [
    ...(short.length > 0
      ? [`Heddles short ${name}: ${short.join(", ")}; hang repair heddles there, or move the warp to the other side.`]
      : []),
    ...(dentsLeft < 0
      ? [`Dents short ${name}: ${String(-dentsLeft)}; a longer reed is needed, or fewer ends at this side.`]
      : []),
  ];
  return frozen({
    side: name,
    ends,
    dents,
    heddles,
    dentsLeft,
    heddlesLeft,
    shortages,
  });
}
