import { check, refuse } from "../refusal/check.js";
import { aSequence } from "../refusal/kinds.js";
import { everyEnd } from "../sequence/every-end.js";
import { item } from "../sequence/item.js";
import { sameColour } from "../sequence/same-colour.js";
import type { Sequence } from "../sequence/sequence.js";

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

/** Pairs of ends that are compared at most, once what both warps begin and end with is set aside. */
const MOST_COMPARED = 36_000_000;

/**
 * The fewest single ends to take out and to put in so that one warp becomes the other.
 *
 * @throws StripeError for two warps that differ over many thousands of ends
 * @example shortestEdit({ from: old, to: planned }).changed // 12
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
    refuse("shortestEdit", "too-long", "from", {
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
  walk(taken, put, add);
  for (const colour of from.slice(from.length - tail)) add("keep", colour);
  const changed = steps.reduce((sum, { change, ends }) => (change === "keep" ? sum : sum + ends), 0);
  return { changed, steps };
}

const [KEEP, TAKE, PUT] = [0, 1, 2];

/** The longest common order of colours, by a plain table from the last ends back; beats cleverer ways at a loom's size. */
function walk<C>(from: readonly C[], to: readonly C[], add: (change: EditStep<C>["change"], colour: C) => void): void {
  const numbers = new Map([...from, ...to].map((colour, index) => [colour, index]));
  const [a, b] = [from, to].map((colours) => Int32Array.from(colours, (colour) => numbers.get(colour) ?? -1)) as [
    Int32Array,
    Int32Array,
  ];
  const width = b.length + 1;
  const ways = new Uint8Array(a.length * b.length);
  let below = new Int32Array(width);
  let row = new Int32Array(width);
  for (let i = a.length - 1; i >= 0; i--) {
    const colour = a[i];
    let right = 0;
    for (let j = b.length - 1; j >= 0; j--) {
      const down = below[j] ?? 0;
      let way = down >= right ? TAKE : PUT;
      let kept = down >= right ? down : right;
      if (colour === b[j]) {
        kept = (below[j + 1] ?? 0) + 1;
        way = KEEP;
      }
      row[j] = right = kept;
      ways[i * b.length + j] = way;
    }
    [below, row] = [row, below];
  }
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    const way = i === a.length ? PUT : j === b.length ? TAKE : ways[i * b.length + j];
    if (way === KEEP) add("keep", item(from, i));
    else if (way === TAKE) add("take out", item(from, i));
    else add("put in", item(to, j));
    if (way !== PUT) i++;
    if (way !== TAKE) j++;
  }
}
