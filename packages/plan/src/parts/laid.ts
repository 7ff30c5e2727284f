import { QuantityError } from "@thrum/maths";
import type { Mirrored, Repeated, Runs } from "../job/runs.js";

/** How the runs of one list are laid out: stripes, a threading, a sley or the weft of a piece. */
export interface RunKind<Run, LaidRun> {
  /** What its runs are called where they do not fit. */
  readonly counted: string;
  isOpen(run: Run): boolean;
  /** A run as it lies; an open one so often. */
  closed(run: Run, open: number): LaidRun;
  size(run: LaidRun): number;
  /** Whether an open place came to nothing. */
  isNothing(run: LaidRun): boolean;
  /** As it lies on the way back. */
  turned(run: LaidRun): LaidRun;
  /** Two neighbours that are one run; null where they are two. */
  together(one: LaidRun, other: LaidRun): LaidRun | null;
  /** With the place where it begins: so much lies before it. */
  placed(run: LaidRun, before: number): LaidRun;
}

/** What an open place came to. */
export interface OpenPlace {
  /** As often as it stands. */
  readonly number: number;
  /** What is over of the room. */
  readonly over: number;
  /** The rooms that nothing would be over of: the nearest below and above, the same where nothing is over. */
  readonly closes: readonly [below: number, above: number];
}

/** Runs as they lie, neighbours alike as one. */
export interface Laid<LaidRun> {
  readonly runs: readonly LaidRun[];
  readonly size: number;
  /** Null where no place was left open. */
  readonly open: OpenPlace | null;
}

const MOST = 1_000_000;

function refuse(expected: string, received: string): never {
  throw new QuantityError({ code: "out-of-range", function: "laid", path: ["list"], expected, received, remedy: "" });
}

function isRepeat<Run>(item: Run | Repeated<Run> | Mirrored<Run>): item is Repeated<Run> {
  return typeof item === "object" && item !== null && "repeat" in item;
}

function isMirror<Run>(item: Run | Repeated<Run> | Mirrored<Run>): item is Mirrored<Run> {
  return typeof item === "object" && item !== null && "mirror" in item;
}

/** Whether a place is left open, in a mirror too. */
export function isOpen<Run, LaidRun>(list: Runs<Run>, kind: RunKind<Run, LaidRun>): boolean {
  return list.some((item) =>
    isRepeat(item)
      ? item.repeat === "the rest" || isOpen(item.of, kind)
      : isMirror(item)
        ? isOpen(item.mirror, kind)
        : kind.isOpen(item),
  );
}

/** All runs one after the other, those of no size too: they may stand in the middle of a mirror. */
function written<Run, LaidRun>(list: Runs<Run>, open: number, kind: RunKind<Run, LaidRun>): LaidRun[] {
  const laid: LaidRun[] = [];
  let [size, added] = [0, 0];
  const add = (run: LaidRun): void => {
    size += kind.size(run);
    added += 1;
    if (size > MOST || added > MOST) refuse(`at most ${String(MOST)} ${kind.counted}`, "more");
    const last = laid.at(-1);
    const one = last === undefined ? null : kind.together(last, run);
    if (one === null) laid.push(run);
    else laid[laid.length - 1] = one;
  };
  for (const item of list) {
    if (isRepeat(item)) {
      const runs = written(item.of, open, kind);
      const times = item.repeat === "the rest" ? open : item.repeat;
      for (let time = 0; time < times; time += 1) runs.forEach(add);
    } else if (isMirror(item)) {
      const there = written(item.mirror, open, kind);
      there.forEach(add);
      const back = there.slice(0, item.middle === "once" ? -1 : undefined).reverse();
      for (const run of back) add(kind.turned(run));
    } else add(kind.closed(item, open));
  }
  return laid;
}

function sizeOf<Run, LaidRun>(runs: readonly LaidRun[], kind: RunKind<Run, LaidRun>): number {
  return runs.reduce((total, run) => total + kind.size(run), 0);
}

function openPlace<Run, LaidRun>(list: Runs<Run>, kind: RunKind<Run, LaidRun>, room: number): OpenPlace {
  const sizeWith = (open: number): number => sizeOf(written(list, open, kind), kind);
  // What each more adds is read off two layings, so that mirrors and their middles need no rule of their own.
  const one = sizeWith(1);
  const each = sizeWith(2) - one;
  const none = sizeWith(0);
  if (each === 0) refuse("an open place that takes up room", "one that takes none");
  if (room < none)
    refuse(`room for the ${String(none)} ${kind.counted} beside the open place`, `room for ${String(room)}`);
  const number = Math.max(0, Math.floor((room - one) / each) + 1);
  const below = number === 0 ? none : one + (number - 1) * each;
  const over = room - below;
  return { number, over, closes: [below, over === 0 ? below : one + number * each] };
}

/** Neighbours as one, each with its place; what came to nothing left out. */
function placed<Run, LaidRun>(list: readonly LaidRun[], kind: RunKind<Run, LaidRun>): readonly LaidRun[] {
  const runs: LaidRun[] = [];
  let size = 0;
  for (const run of list) {
    if (kind.isNothing(run)) continue;
    const last = runs.at(-1);
    const one = last === undefined ? null : kind.together(last, run);
    if (one === null) runs.push(kind.placed(run, size));
    else runs[runs.length - 1] = one;
    size += kind.size(run);
  }
  return runs;
}

/** Runs as they lie where an open place comes to so much. */
export function laidWith<Run, LaidRun>(list: Runs<Run>, kind: RunKind<Run, LaidRun>, open: number): readonly LaidRun[] {
  return placed(written(list, open, kind), kind);
}

/**
 * Runs as they lie: repeats and mirrors written out, the open place filled from the room there is, neighbours alike as
 * one run.
 *
 * @param room asked only where a place is left open
 * @throws QuantityError where the room does not even hold what has a number
 */
export function laid<Run, LaidRun>(list: Runs<Run>, kind: RunKind<Run, LaidRun>, room?: number): Laid<LaidRun> {
  const isClosed = !isOpen(list, kind);
  if (!isClosed && room === undefined) throw new RangeError("an open place, and no room");
  const open = isClosed || room === undefined ? null : openPlace(list, kind, room);
  const runs = laidWith(list, kind, open?.number ?? 0);
  return { runs, size: sizeOf(runs, kind), open };
}
