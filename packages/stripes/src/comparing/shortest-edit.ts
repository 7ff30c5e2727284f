import { check, refuse } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import { everyEnd } from "../sequence/every-end.js";
import { item } from "../sequence/item.js";
import { sameColour } from "../sequence/same-colour.js";
import type { Sequence } from "../sequence/sequence.js";
import { keptEnds } from "./kept-ends.js";

export interface ShortestEditInput<C> {
  readonly from: Sequence<C>;
  readonly to: Sequence<C>;
}

export interface EditStep<C> {
  readonly change: "keep" | "take out" | "put in";
  readonly colour: C;
  readonly ends: number;
}

export interface Edit<C> {
  /** Ends taken out and put in: no other edit changes fewer. */
  readonly changed: number;
  /** From end 1 on. */
  readonly steps: readonly EditStep<C>[];
}

/** Pairs of ends compared at most, once what both warps begin and end with is set aside: 50 MB of table. */
const MOST_COMPARED = 400_000_000;

/**
 * The fewest single ends to take out and to put in so that one warp becomes the other.
 *
 * @throws StripeError for two warps that differ over many thousands of ends
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * shortestEdit({ from: half, to: multiply({ sequence: half, by: 2 }) }).changed // 16
 */
export function shortestEdit<C>(input: ShortestEditInput<C>): Edit<C> {
  check("shortestEdit", input, { from: aSequence, to: aSequence });
  const [from, to] = [everyEnd(input.from), everyEnd(input.to)];
  const shorter = Math.min(from.length, to.length);
  let head = 0;
  while (head < shorter && sameColour(from[head], to[head])) head++;
  let tail = 0;
  while (tail < shorter - head && sameColour(from[from.length - 1 - tail], to[to.length - 1 - tail])) tail++;
  const [taken, put] = [from.slice(head, from.length - tail), to.slice(head, to.length - tail)];
  if (taken.length * put.length > MOST_COMPARED) {
    refuse("shortestEdit", "too-long", ["from"], {
      expected: `warps that differ over fewer ends, ${MOST_COMPARED} pairs of ends at most`,
      received: `${taken.length} ends against ${put.length}`,
      remedy: "Compare them part by part.",
    });
  }
  const steps: EditStep<C>[] = [];
  const add = (change: EditStep<C>["change"], colour: C): void => {
    const last = steps.at(-1);
    const joins = last?.change === change && sameColour(last.colour, colour);
    if (joins) steps[steps.length - 1] = { change, colour, ends: last.ends + 1 };
    else steps.push({ change, colour, ends: 1 });
  };
  for (const colour of from.slice(0, head)) add("keep", colour);
  let [i, j] = [0, 0];
  for (const [keptFrom, keptTo] of [...keptEnds(taken, put), [taken.length, put.length] as const]) {
    for (const colour of taken.slice(i, keptFrom)) add("take out", colour);
    for (const colour of put.slice(j, keptTo)) add("put in", colour);
    if (keptFrom < taken.length) add("keep", item(taken, keptFrom));
    [i, j] = [keptFrom + 1, keptTo + 1];
  }
  for (const colour of from.slice(from.length - tail)) add("keep", colour);
  const changed = steps.reduce((sum, { change, ends }) => (change === "keep" ? sum : sum + ends), 0);
  return { changed, steps };
}
