import { leaseLifts } from "@thrum/maths";
import type { Threaded } from "../job/loom.js";
import type { Runs } from "../job/runs.js";
import type { OldWarpFound } from "./old-warp-in-order.js";
import { shaftsOf } from "./shafts.js";
import { NOTHING_ADDED } from "./sides.js";
import { eachPlace } from "./stretch.js";
import { tableTied } from "./table.js";

/** How the order of the old warp is kept before it is cut. */
export interface OldLease {
  /** Shafts to lift one after the other; null where neighbours forbid a lease by lifting. */
  readonly lifts: readonly [first: readonly number[], second: readonly number[]] | null;
  /** Old ends, each with its next, that no two lifts part: picked up by hand. */
  readonly together: readonly (readonly [end: number, next: number])[];
  /** Old ends that no lift raises. */
  readonly floating: readonly number[];
}

/** Two lifts that raise alternate old ends as they are threaded, those on another shaft too; a pair counts as one. */
export function leaseOfOldWarp(oldWarp: OldWarpFound, threading: Runs<Threaded>): OldLease {
  const table = tableTied(oldWarp, NOTHING_ADDED);
  const { shafts, sharing, repeat } = shaftsOf(threading, table, oldWarp.faults);
  const shared = new Set(sharing);
  const [threaded, ends, floating]: [number[], number[], number[]] = [[], [], []];
  // Of a pair in one heddle one thread is enough, whichever is there.
  let isSeen = false;
  eachPlace(table.stretches, ({ standing, newEnd, oldEnd }) => {
    if (newEnd === null || !shared.has(newEnd)) isSeen = false;
    if (standing !== "joined" || newEnd === null || oldEnd === null || isSeen) return;
    isSeen = true;
    const shaft = shafts[newEnd - 1];
    if (shaft === "floating") floating.push(oldEnd);
    if (typeof shaft !== "number") return;
    threaded.push(shaft);
    ends.push(oldEnd);
  });
  if (threaded.length === 0) return { lifts: null, together: [], floating };
  const most = threaded.reduce((so, shaft) => Math.max(so, shaft), 1);
  const { lifts, together } = leaseLifts({ shafts: most, parts: partsOf(threaded, repeat) });
  const named = together.map(([end, next]) => [ends[end - 1] ?? 0, ends[next - 1] ?? 0] as const);
  return { lifts, together: named, floating };
}

/** A threading over and over is told by its repeat; any other end by end. */
function partsOf(threaded: readonly number[], repeat: number) {
  const isRepeat = repeat > 0 && threaded.every((shaft, at) => at < repeat || shaft === threaded[at - repeat]);
  const times = isRepeat ? Math.floor(threaded.length / repeat) : 0;
  const [one, rest] = [threaded.slice(0, repeat), threaded.slice(times * repeat)];
  return [
    ...(times > 0 ? [{ threading: one, times }] : []),
    ...(rest.length > 0 ? [{ threading: rest, times: 1 }] : []),
  ];
}
