import { listOf, readInputs, whole } from "../../engine/formula/index.js";

export interface GroupsWithMiscountInput {
  /** Ends of each group as planned, in the order tied. */
  readonly planned: readonly number[];
  /** Old ends counted in each group. */
  readonly oldCounted: readonly number[];
  /** New ends counted in each group. */
  readonly newCounted: readonly number[];
}

/** A group that does not hold what was planned. */
export interface Miscount {
  /** From 1, in the order tied. */
  readonly group: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  /** Counted less planned. */
  readonly oldOff: number;
  readonly newOff: number;
  readonly says: string;
}

function sentence(group: number, oldOff: number, newOff: number): string {
  const over = (off: number, what: string): string =>
    off === 0
      ? `its ${what} ends are right`
      : `${String(Math.abs(off))} ${what} ${Math.abs(off) === 1 ? "end" : "ends"} ${off > 0 ? "too many" : "too few"}`;
  return `Group ${String(group)}: ${over(oldOff, "old")}, ${over(newOff, "new")}.`;
}

/**
 * The groups that hold a miscount, from the ends of each group counted on both warps before it is tied.
 *
 * @param input the groups as planned and as counted, three lists of one length
 * @returns an empty list where every group holds what was planned
 * @throws QuantityError for lists that are missing, empty, or unlike in length
 * @source common practice, no source
 * @example groupsWithMiscount({ planned: [24, 24], oldCounted: [24, 24], newCounted: [24, 23] })[0].says // "Group 2: its old ends are right, 1 new end too few."
 */
export function groupsWithMiscount(input: GroupsWithMiscountInput): readonly Miscount[] {
  const declared = {
    planned: listOf(whole("ends", "of one group, as planned", { atLeast: 1 })),
    oldCounted: listOf(whole("ends", "of the old warp counted in one group", { atLeast: 0 })),
    newCounted: listOf(whole("ends", "of the new warp counted in one group", { atLeast: 0 })),
  };
  readInputs("groupsWithMiscount", declared, input, "together");
  let before = 0;
  const groups = input.planned.map((ends, at): Miscount => {
    const [oldOff, newOff] = [(input.oldCounted[at] ?? 0) - ends, (input.newCounted[at] ?? 0) - ends];
    const firstEnd = before + 1;
    before += ends;
    const says = sentence(at + 1, oldOff, newOff);
    return Object.freeze({ group: at + 1, firstEnd, lastEnd: before, oldOff, newOff, says });
  });
  return Object.freeze(groups.filter(({ oldOff, newOff }) => oldOff !== 0 || newOff !== 0));
}
