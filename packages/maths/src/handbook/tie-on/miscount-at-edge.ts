import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { QuantityError } from "../../engine/refusal.js";

export interface MiscountAtEdgeInput {
  /** Ends of each group as planned, in the order tied. */
  readonly planned: readonly number[];
  /** The last group whose edge was seen to agree; 0 where none was. */
  readonly lastRight: number;
  /** The group at whose edge ends were left over. */
  readonly foundAt: number;
  /** Old ends of the groups so far without a partner. */
  readonly oldLeft: number;
  /** New ends of the groups so far without a partner. */
  readonly newLeft: number;
}

/** Where to look for a miscount that showed at an edge. */
export interface MiscountAtEdge {
  /** From 1, in the order tied. */
  readonly groups: readonly number[];
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly says: string;
}

/**
 * Where a miscount lies that shows as ends left over at an edge: in the groups tied since the last edge that agreed.
 *
 * @param input the groups as planned, the last edge that agreed, and what is left over at the edge reached
 * @throws QuantityError "no-answer" where nothing is left over
 * @source common practice, no source
 * @example miscountAtEdge({ planned: [24, 24, 12], lastRight: 1, foundAt: 2, oldLeft: 1, newLeft: 0 }).firstEnd // 25
 */
export function miscountAtEdge(input: MiscountAtEdgeInput): MiscountAtEdge {
  const groups = Array.isArray((input as Partial<MiscountAtEdgeInput> | null | undefined)?.planned)
    ? input.planned.length
    : 0;
  const left = (warp: string): ReturnType<typeof whole> =>
    whole("ends", `of the ${warp} warp without a partner`, { atLeast: 0 });
  const declared = {
    planned: listOf(whole("ends", "of one group, as planned", { atLeast: 1 })),
    lastRight: whole("groups", "up to the last edge that agreed", { atLeast: 0, atMost: Math.max(0, groups - 1) }),
    foundAt: whole("groups", "up to the edge with ends left over", { atLeast: 1, atMost: Math.max(1, groups) }),
    oldLeft: left("old"),
    newLeft: left("new"),
  };
  readInputs("miscountAtEdge", declared, input);
  const { planned, lastRight, foundAt, oldLeft, newLeft } = input;
  const refuse = (code: "out-of-range" | "no-answer", field: string, expected: string, received: string): never => {
    throw new QuantityError({ code, function: "miscountAtEdge", path: [field], expected, received, remedy: "" });
  };
  if (foundAt <= lastRight) refuse("out-of-range", "foundAt", "a group after the last that agreed", String(foundAt));
  if (oldLeft + newLeft === 0) refuse("no-answer", "oldLeft", "ends without a partner", "nothing is left over");
  const upTo = (group: number): number => planned.slice(0, group).reduce((total, ends) => total + ends, 0);
  const [firstEnd, lastEnd] = [upTo(lastRight) + 1, upTo(foundAt)];
  const held = Array.from({ length: foundAt - lastRight }, (_, at) => lastRight + at + 1);
  const says =
    oldLeft === newLeft
      ? `As many old as new ends are left over: tie them, then count ends ${String(firstEnd)} to ${String(lastEnd)} again.`
      : oldLeft > newLeft
        ? `${String(oldLeft - newLeft)} more old than new: between ends ${String(firstEnd)} and ${String(lastEnd)} an old end was passed over, or the chain is short of a new one.`
        : `${String(newLeft - oldLeft)} more new than old: between ends ${String(firstEnd)} and ${String(lastEnd)} a new end was passed over, or the chain holds one too many.`;
  return Object.freeze({ groups: Object.freeze(held), firstEnd, lastEnd, says });
}
