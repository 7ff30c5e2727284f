import type { Dents } from "./dents.js";
import type { Group } from "./groups.js";
import type { Hangs, Shafts } from "./shafts.js";
import type { SpecialEnd } from "./special-ends.js";
import { eachPlace } from "./stretch.js";
import type { Table } from "./table.js";

/** A group as it stands on the loom: what is held against the count before its knots are tied. */
export interface GroupOnLoom extends Group {
  /** Old ends tied in it; null where there are none. */
  readonly firstOldEnd: number | null;
  readonly lastOldEnd: number | null;
  /** Threads of the old warp that are counted with it, those too that are never tied. */
  readonly oldThreads: number;
  readonly firstShaft: Hangs;
  readonly lastShaft: Hangs;
  readonly firstDent: number | null;
  readonly lastDent: number | null;
  /** Whether the stripe edge it ends with stands inside a dent, or inside a repeat; none where that is not known. */
  readonly cutsDent: boolean | null;
  readonly cutsRepeat: boolean | null;
  readonly special: readonly SpecialEnd[];
}

export interface ColumnsKnown {
  readonly shafts: Shafts | null;
  readonly dents: Dents | null;
}

/** Of every new end the old one; and the threads that are counted with it beside its own. */
function oldEnds(table: Table, special: readonly SpecialEnd[]) {
  const old: (number | null)[] = [];
  const beside: number[] = [];
  eachPlace(table.stretches, ({ newEnd, oldEnd, standing }) => {
    if (newEnd !== null) old.push(standing === "second on one knot" ? null : oldEnd);
  });
  for (const { newEnd, cutBack } of special) beside[newEnd] = (beside[newEnd] ?? 0) + cutBack;
  return { old, beside };
}

/** The groups with their shafts, dents and old ends, and what of the old warp is special in each. */
export function groupsOnLoom(
  groups: readonly Group[],
  table: Table,
  special: readonly SpecialEnd[],
  { shafts, dents }: ColumnsKnown,
): readonly GroupOnLoom[] {
  const { old, beside } = oldEnds(table, special);
  const hangs = (end: number): Hangs => shafts?.shafts[end - 1] ?? "not known";
  const dentOf = (end: number): number | null => dents?.dents[end - 1] ?? null;
  return groups.map((group): GroupOnLoom => {
    const { firstEnd, lastEnd } = group;
    const tied = old.slice(firstEnd - 1, lastEnd).filter((end) => end !== null);
    const within = special.filter((one) => one.newEnd <= lastEnd && one.newEnd + Math.max(1, one.ends) > firstEnd);
    const isEdge = group.endsStripe && lastEnd < table.newEnds;
    const [dent, next] = [dentOf(lastEnd), dentOf(lastEnd + 1)];
    const isBare = shafts !== null && shafts.repeat > 0;
    return {
      ...group,
      firstOldEnd: tied[0] ?? null,
      lastOldEnd: tied.at(-1) ?? null,
      oldThreads: tied.length + beside.slice(firstEnd, lastEnd + 1).reduce((sum, one) => sum + one, 0),
      firstShaft: hangs(firstEnd),
      lastShaft: hangs(lastEnd),
      firstDent: dentOf(firstEnd),
      lastDent: dent,
      cutsDent: !isEdge ? false : dent === null || next === null ? null : dent === next,
      cutsRepeat: !isEdge ? false : isBare ? shafts.placeInRepeat[lastEnd - 1] !== shafts.repeat : null,
      special: within.map((one) => clipped(one, firstEnd, lastEnd)),
    };
  });
}

/** Ends added at a side run through several groups: of each group its own. */
function clipped(special: SpecialEnd, firstEnd: number, lastEnd: number): SpecialEnd {
  if (special.ends <= 1) return special;
  const newEnd = Math.max(special.newEnd, firstEnd);
  return { ...special, newEnd, ends: Math.min(special.newEnd + special.ends - 1, lastEnd) - newEnd + 1 };
}
