import { stillHolds } from "@thrum/plan";
import type { PlannedGroup, Progress } from "@thrum/plan";
import type { WorkRecord } from "../keep/records.js";
import type { Change } from "./act.js";
import { begun } from "./act.js";
import type { Loom } from "./loom.js";
import { allTied, lastTied } from "./tie.js";
import { loom as words } from "../words/loom.js";

/** How the plan differs from that of the first tick: not in what it lists, after the last end done, or before it. */
export interface PlanChange {
  readonly is: "same" | "goes on" | "asks";
  readonly tied: number;
  /** The first end that differs. */
  readonly end: number;
}

function firstEndOf(groups: readonly PlannedGroup[], at: number): number {
  return groups.slice(0, at).reduce((sum, { ends }) => sum + ends, 1);
}

/** Holds the plan against the work done on an earlier one. */
export function planChange(progress: Progress, loom: Pick<Loom, "groups" | "rows" | "chains">): PlanChange {
  const now = begun("", "", loom).progress;
  const [groups, chains] = [now.groups ?? [], now.chains ?? []];
  const held = stillHolds(progress, { groups, chains });
  const isSame =
    held.groups === groups.length &&
    held.groups === (progress.groups?.length ?? held.groups) &&
    held.chains === chains.length &&
    held.chains === (progress.chains?.length ?? held.chains);
  const rows = loom.rows ?? [];
  const last = rows.length === 0 ? null : lastTied(progress, rows);
  const done = progress.tied === "all" ? (progress.groups?.length ?? 0) : (last?.group ?? 0);
  const tied = rows.length === 0 ? 0 : allTied(progress, rows);
  const is = isSame ? "same" : done <= held.groups ? "goes on" : "asks";
  return { is, tied, end: firstEndOf(groups, held.groups) };
}

/** The work goes on with the new plan: its lists are those of the ticks from now on. */
export function withNewPlan(loom: Pick<Loom, "groups" | "chains">): Change {
  const { groups, chains } = begun("", "", loom).progress;
  return { progress: { groups, chains }, says: words.newPlan, clicks: 0 };
}

/** Where she keeps the old order for this warp, step 0 of tying stands among those done. */
export const isOldKept = ({ here }: WorkRecord): boolean => here.steps.tie?.includes(0) ?? false;

/** The warp is tied to its end in the order of the ticks. */
export function oldOrderKept({ here }: WorkRecord): Change {
  return { here: { steps: { ...here.steps, tie: [0] } }, says: words.keepOld, clicks: 0 };
}

/** Tying begins again on the new plan. */
export function tyingAgain(loom: Pick<Loom, "groups" | "chains">): Change {
  const { groups, chains } = begun("", "", loom).progress;
  const none = { tied: undefined, stopped: undefined, leftOver: undefined, counted: undefined };
  return { progress: { groups, chains, ...none }, says: words.newPlan, clicks: 0 };
}
