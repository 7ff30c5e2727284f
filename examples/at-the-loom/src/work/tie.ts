import { isTicked, knotsTied, miscounts, tickedOff, untick } from "@thrum/plan";
import type { Miscount, Progress } from "@thrum/plan";
import type { Here } from "../keep/records.js";
import { loom as words } from "../words/loom.js";
import type { Change } from "./act.js";
import type { Group, Loom, Row } from "./loom.js";

/** The group to be tied next; null where all are. */
export function toTie(progress: Progress, rows: readonly Row[]): Row | null {
  return rows.find(({ group }) => !isTicked(progress.tied, group)) ?? null;
}

/** The group tied last, before that; null at the beginning. */
export function lastTied(progress: Progress, rows: readonly Row[]): Row | null {
  const now = toTie(progress, rows);
  return rows[now === null ? rows.length - 1 : now.turn - 2] ?? null;
}

export function knotsInWork(progress: Progress, row: Row): number {
  return progress.stopped?.group === row.group ? Math.min(progress.stopped.knot, row.knots) : 0;
}

/** Knots that are done. */
export function allTied(progress: Progress, rows: readonly Row[]): number {
  const inOrder = [...rows].sort((one, other) => one.group - other.group);
  return knotsTied(
    progress,
    inOrder.map(({ knots, yarns }) => ({ ends: knots, yarns })),
  );
}

const MOST_PACE = 5;

/** One tap: a knot where a tap is one and the group is not full, else the whole group. */
export function tied(
  progress: Progress,
  here: Here,
  rows: readonly Row[],
  tap: "group" | "knot",
  now: number,
): Change | null {
  const row = toTie(progress, rows);
  if (row === null) return null;
  const knot = knotsInWork(progress, row);
  if (tap === "knot" && knot < row.knots) {
    const stopped = { group: row.group, knot: knot + 1 };
    const isFull = stopped.knot === row.knots;
    return {
      progress: { stopped },
      says: isFull ? words.full(stopped.knot, row.group) : String(stopped.knot),
      clicks: 1,
    };
  }
  const ticks = tickedOff(progress.tied, row.group);
  const after = rows.find(({ group }) => !isTicked(ticks, group));
  const isAll = after === undefined;
  return {
    progress: { tied: isAll ? "all" : ticks, stopped: undefined },
    here: { pace: [...here.pace, [now, row.knots] as const].slice(-1 - MOST_PACE) },
    says: isAll ? words.allKnots(rows.at(-1)?.knotsSoFar ?? 0) : words.groupSaid(after),
    clicks: row.edge === null ? 1 : 2,
  };
}

/** Ends seen left over at the edge of this group: noted, and the tying goes on. */
export function leftOver(
  progress: Progress,
  group: number,
  seen: { readonly old: number; readonly new: number },
): Change {
  const others = (progress.leftOver ?? []).filter((one) => one.group !== group);
  return {
    progress: { leftOver: [...others, { group, ...seen }] },
    here: { open: null },
    says: words.noted,
    clicks: 0,
  };
}

/** What is seen at this edge, held against all that is known. */
export function miscountAt(
  progress: Progress,
  loom: Pick<Loom, "groups" | "order">,
  group: number,
  seen: { readonly old: number; readonly new: number },
): Miscount | null {
  const others = (progress.leftOver ?? []).filter((one) => one.group !== group);
  const asked: Progress = { ...progress, leftOver: [...others, { group, ...seen }] };
  return miscounts(asked, loom.groups ?? [], loom.order).find((one) => one.group === group) ?? null;
}

/** Edges where something is still left over. */
export function openEdges(progress: Progress, loom: Pick<Loom, "groups" | "order">): readonly Miscount[] {
  return loom.groups === null ? [] : miscounts(progress, loom.groups, loom.order);
}

/** The work stands at another group: those before it, in their turn, are tied, it and those after it are not. */
export function placedAt(progress: Progress, rows: readonly Row[], turn: number, groups: readonly Group[]): Change {
  let ticks = progress.tied ?? [];
  for (const row of rows)
    ticks = row.turn < turn ? tickedOff(ticks, row.group) : untick(ticks, row.group, groups.length);
  return { progress: { tied: ticks, stopped: undefined }, says: words.group(rows[turn - 1]?.group ?? 0), clicks: 0 };
}
