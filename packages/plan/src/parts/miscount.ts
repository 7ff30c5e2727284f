import type { JoiningRow } from "./joining-rows.js";
import { counted } from "./told.js";

/** What is seen left over at the edge of a stripe; ends hidden behind others are not counted. */
export interface SeenAtEdge {
  /** The group with which the stripe is done. */
  readonly group: number;
  readonly old: number;
  readonly new: number;
}

/** A group counted before tying; null where it was not. */
export interface GroupCounted {
  readonly group: number;
  readonly old: number | null;
  readonly new: number | null;
}

export interface Tying {
  /** The groups in the order tied. */
  readonly rows: readonly JoiningRow[];
  readonly oneColourAtATime: boolean;
  /** Every edge reached where something was left over. */
  readonly leftOver: readonly SeenAtEdge[];
  readonly counted: readonly GroupCounted[];
}

/** A group in which the miscount may lie. */
export interface Suspect {
  readonly group: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  /** Counted more than planned, or fewer; null where it was not counted. */
  readonly oldOff: number | null;
  readonly newOff: number | null;
}

export interface Miscount {
  readonly is: "agrees" | "tie on" | "miscount";
  /** After the last edge that agreed. */
  readonly firstEnd: number;
  readonly lastEnd: number;
  /** Those counted odd first; groups whose both counts were right are left out, unless all were. */
  readonly suspects: readonly Suspect[];
  readonly lookFor: "a bare old end" | "a loose new end" | null;
  readonly says: string;
}

/** What one more of the one than of the other means. */
function meaning(seen: SeenAtEdge): Pick<Miscount, "lookFor" | "says"> {
  const number = Math.abs(seen.new - seen.old);
  return seen.new > 0
    ? {
        lookFor: "a bare old end",
        says: `${counted(number, "new end")} left over: an old end was passed over, or two old ends lie in one knot; else the chain holds ${String(number)} too many. Look for a bare old end.`,
      }
    : {
        lookFor: "a loose new end",
        says: `${counted(number, "old end")} left over: a new end was passed over, or two new ends lie in one knot; else the chain is short of ${String(number)}. Look for a loose new end.`,
      };
}

/** The rows tied since the last edge that agreed; one colour at a time a stripe stands for itself. */
function sinceLastAgreed({ rows, oneColourAtATime, leftOver }: Tying, at: number): readonly JoiningRow[] {
  const disagreed = leftOver.map(({ group }) => group);
  let first = at;
  for (; first > 0; first -= 1) {
    const before = rows[first - 1];
    const isOther =
      before !== undefined && before.edge !== null && (oneColourAtATime || !disagreed.includes(before.group));
    if (isOther) break;
  }
  return rows.slice(first, at + 1);
}

function suspectOf(row: JoiningRow, all: readonly GroupCounted[]): Suspect {
  const found = all.find(({ group }) => group === row.group);
  const off = (number: number | null | undefined, planned: number): number | null =>
    number === null || number === undefined ? null : number - planned;
  const { group, firstEnd, lastEnd } = row;
  return { group, firstEnd, lastEnd, oldOff: off(found?.old, row.oldThreads), newOff: off(found?.new, row.ends) };
}

const isOdd = ({ oldOff, newOff }: Suspect): boolean => (oldOff ?? 0) !== 0 || (newOff ?? 0) !== 0;
const isRight = ({ oldOff, newOff }: Suspect): boolean => oldOff === 0 && newOff === 0;

function inWords({ firstEnd, lastEnd, group, oldOff, newOff }: Suspect): string {
  const parts = [
    ...(oldOff === null || oldOff === 0
      ? []
      : [`${counted(Math.abs(oldOff), "old end")} too ${oldOff > 0 ? "many" : "few"}`]),
    ...(newOff === null || newOff === 0
      ? []
      : [`${counted(Math.abs(newOff), "new end")} too ${newOff > 0 ? "many" : "few"}`]),
  ];
  return `Group ${String(group)}, ends ${String(firstEnd)} to ${String(lastEnd)}, was counted with ${parts.join(" and ")}: begin there.`;
}

/** Where a miscount lies that is seen at the edge of a stripe; two slips may still cancel. */
export function miscountSeen(tying: Tying, seen: SeenAtEdge): Miscount {
  const at = tying.rows.findIndex(({ group }) => group === seen.group);
  const since = at < 0 ? [] : sinceLastAgreed(tying, at);
  const firstEnd = since.reduce((so, row) => Math.min(so, row.firstEnd), Infinity);
  const lastEnd = since.reduce((so, row) => Math.max(so, row.lastEnd), 0);
  if (at < 0) throw new RangeError(`no group ${String(seen.group)}`);
  const where = { firstEnd, lastEnd, suspects: [], lookFor: null };
  if (seen.old === 0 && seen.new === 0)
    return {
      is: "agrees",
      ...where,
      says: "Nothing is left over. Two slips can still cancel: hold the last dent and shaft against the list.",
    };
  if (seen.old > 0 && seen.new > 0)
    return { is: "tie on", ...where, says: "Both old and new ends are left: tie on, until one of them runs out." };
  const all = since.map((row) => suspectOf(row, tying.counted));
  const open = all.filter((one) => !isRight(one));
  const odd = open.filter(isOdd);
  const suspects = [...odd, ...(open.length === 0 ? all : open.filter((one) => !isOdd(one)))];
  const { lookFor, says } = meaning(seen);
  const range = `It lies in ends ${String(firstEnd)} to ${String(lastEnd)}.`;
  return { is: "miscount", firstEnd, lastEnd, suspects, lookFor, says: [says, range, ...odd.map(inWords)].join(" ") };
}
