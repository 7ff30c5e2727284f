import type { JobJoin } from "../job/job.js";
import type { Hand } from "../job/runs.js";
import type { GroupOnLoom } from "./groups-on-loom.js";
import { isSameHand } from "./laid-stripes.js";
import type { Hangs } from "./shafts.js";

/** The last end of a stripe as it is tied: what is seen there is held against the list. */
export interface TiedEdge {
  readonly end: number;
  readonly dent: number | null;
  readonly shaft: Hangs;
  readonly cutsDent: boolean | null;
  readonly cutsRepeat: boolean | null;
}

/** A group in its turn. */
export interface JoiningRow extends GroupOnLoom {
  /** From 1, in the order tied. */
  readonly turn: number;
  /** Of its ends, the one tied first and the one tied last. */
  readonly from: number;
  readonly to: number;
  /** Ends between it and the one tied before, those already tied among them. */
  readonly passOver: number;
  readonly knots: number;
  /** Its own among them. */
  readonly knotsSoFar: number;
  /** Null where its stripe goes on. */
  readonly edge: TiedEdge | null;
}

type Order = NonNullable<JobJoin["order"]>;
type Partner = NonNullable<JobJoin["partner"]>;

/** The hands of the warp in the order in which they come. */
function handsOf(groups: readonly Hand[]): readonly Hand[] {
  const hands: Hand[] = [];
  for (const group of groups) if (!hands.some((hand) => isSameHand(hand, group))) hands.push(group);
  return hands;
}

function inOrder(groups: readonly GroupOnLoom[], order: Order): readonly GroupOnLoom[] {
  if (order === "from end 1") return groups;
  if (order === "from the last end") return [...groups].reverse();
  return handsOf(groups).flatMap((hand) => groups.filter((group) => isSameHand(group, hand)));
}

/** Knots of a group: a second new end shares one, a new end threaded by itself has none. */
export function knotsOf({ ends, special }: GroupOnLoom, partner: Partner | null): number {
  const without = special.reduce((sum, { is, ends: of }) => {
    const isPartner = is === "added" || is === "broken" || is === "mended";
    return is === "second on one knot" || (isPartner && partner === "thread it itself") ? sum + of : sum;
  }, 0);
  return ends - without;
}

/**
 * The groups in the order in which they are tied; each keeps its number. From the last end a stripe is done with its
 * first group, and what is seen at its first end is held against the list.
 */
export function joiningRows(
  groups: readonly GroupOnLoom[],
  order: Order,
  partner: Partner | null,
): readonly JoiningRow[] {
  const isBack = order === "from the last end";
  let knotsSoFar = 0;
  let before: GroupOnLoom | undefined;
  return inOrder(groups, order).map((group, at): JoiningRow => {
    const { firstEnd, lastEnd } = group;
    const lower = groups[group.group - 2];
    const isFirst = lower?.stripe !== group.stripe;
    const knots = knotsOf(group, partner);
    knotsSoFar += knots;
    const starts = before !== undefined && isSameHand(before, group) ? before.lastEnd : 0;
    const passOver = order === "one colour at a time" ? firstEnd - starts - 1 : 0;
    before = group;
    const last = { end: lastEnd, dent: group.lastDent, shaft: group.lastShaft };
    const first = { end: firstEnd, dent: group.firstDent, shaft: group.firstShaft };
    const cuts = isBack ? lower : group;
    const cutsAt = { cutsDent: cuts ? cuts.cutsDent : false, cutsRepeat: cuts ? cuts.cutsRepeat : false };
    const isEdge = isBack ? isFirst : group.endsStripe;
    return {
      ...group,
      turn: at + 1,
      from: isBack ? lastEnd : firstEnd,
      to: isBack ? firstEnd : lastEnd,
      passOver,
      knots,
      knotsSoFar,
      edge: isEdge ? { ...(isBack ? first : last), ...cutsAt } : null,
    };
  });
}
