import { listOf, noneOrMore, readInputs, whole } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { refuse } from "../../engine/refusal.js";

export interface MiscountAtEdgeInput {
  /** Ends of each group as planned, in the order tied. */
  readonly planned: readonly number[];
  /** The last group whose edge was seen to agree; 0 where none was. */
  readonly lastRight: number;
  /** The group at whose edge ends were left over. */
  readonly foundAt: number;
  /** Old ends seen left at the edge, up to its last dent and shaft. */
  readonly oldSeen: number;
  /** New ends of the stripe seen left at the edge. */
  readonly newSeen: number;
  /** Groups whose old and new ends were both counted right. */
  readonly countedRight: readonly number[];
  /** Groups that were counted odd: there it is looked for first. */
  readonly countedOdd: readonly number[];
}

/** Where to look for a miscount that showed at an edge, and for what. */
export interface MiscountAtEdge {
  /** From 1, in the order tied; those counted odd first. */
  readonly groups: readonly number[];
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly lookFor: "a bare old end" | "a loose new end";
  readonly says: string;
}

const MEANS = {
  new: {
    lookFor: "a bare old end",
    says: "an old end was passed over, or two old ends lie in one knot; else the chain holds one too many",
  },
  old: {
    lookFor: "a loose new end",
    says: "a new end was passed over, or two new ends lie in one knot; else the chain is short",
  },
} as const;

function checkCounts(input: MiscountAtEdgeInput): void {
  const groups = Array.isArray((input as Partial<MiscountAtEdgeInput> | null | undefined)?.planned)
    ? input.planned.length
    : 0;
  const seen = (warp: string): ReturnType<typeof whole> =>
    whole("ends", `of the ${warp} warp seen left at the edge`, { atLeast: 0 });
  const counted = (how: string): ReturnType<typeof noneOrMore<number>> =>
    noneOrMore(whole("groups", `by number, that were counted ${how}`, { atLeast: 1, atMost: Math.max(1, groups) }));
  const declared = {
    planned: listOf(whole("ends", "of one group, as planned", { atLeast: 1 })),
    lastRight: whole("groups", "up to the last edge that agreed", { atLeast: 0, atMost: Math.max(0, groups - 1) }),
    foundAt: whole("groups", "up to the edge with ends left over", { atLeast: 1, atMost: Math.max(1, groups) }),
    oldSeen: seen("old"),
    newSeen: seen("new"),
    countedRight: counted("right"),
    countedOdd: counted("odd"),
  };
  const name = "miscountAtEdge";
  readInputs(name, declared, input);
  const { lastRight, foundAt, oldSeen, newSeen } = input;
  if (foundAt <= lastRight)
    refuse("out-of-range", [name, "foundAt"], "a group after the last that agreed", String(foundAt));
  const left = "ends of one warp left over";
  if (oldSeen === 0 && newSeen === 0) {
    const remedy = "The edge agrees; two slips can still cancel, so hold its last dent and shaft against the list.";
    refuse("no-answer", [name, "newSeen"], left, "nothing is left over", remedy);
  }
  if (oldSeen > 0 && newSeen > 0) {
    const received = `${String(oldSeen)} old and ${String(newSeen)} new ends`;
    refuse("no-answer", [name, "newSeen"], left, received, "Tie on until one of the two runs out.");
  }
}

/**
 * Where a miscount lies that shows as ends left over at the edge of a stripe, and what to look for: in the groups tied since
 * the last edge that agreed, without those counted right. Ends are those seen, never those hidden in a knot.
 *
 * @param input the groups as planned, the last edge that agreed, what is seen at the edge reached, and what was counted
 * @throws QuantityError "no-answer" where nothing is left over, or ends of both warps are
 * @source common practice, no source
 * @example
 * const edge = { planned: [24, 24, 12], lastRight: 1, foundAt: 2, countedRight: [], countedOdd: [] };
 * miscountAtEdge({ ...edge, oldSeen: 1, newSeen: 0 }).lookFor // "a loose new end"
 */
export function miscountAtEdge(input: MiscountAtEdgeInput): MiscountAtEdge {
  checkCounts(input);
  const { planned, lastRight, foundAt, newSeen, oldSeen, countedRight, countedOdd } = input;
  const upTo = (group: number): number => planned.slice(0, group).reduce((total, ends) => total + ends, 0);
  const [firstEnd, lastEnd] = [upTo(lastRight) + 1, upTo(foundAt)];
  const tied = Array.from({ length: foundAt - lastRight }, (_, at) => lastRight + at + 1);
  const odd = tied.filter((group) => countedOdd.includes(group));
  const others = tied.filter((group) => !countedOdd.includes(group) && !countedRight.includes(group));
  const { lookFor, says } = newSeen > 0 ? MEANS.new : MEANS.old;
  const left = newSeen > 0 ? `${String(newSeen)} new` : `${String(oldSeen)} old`;
  const first = odd.map((group) => ` First in group ${String(group)}, which was counted odd.`).join("");
  return frozen({
    groups: [...odd, ...others],
    firstEnd,
    lastEnd,
    lookFor,
    says: `${left} left over: ${says}. Look for ${lookFor} between ends ${String(firstEnd)} and ${String(lastEnd)}.${first}`,
  });
}
