import { item } from "./item.js";
import { rotate } from "./rotate.js";
import type { Sequence } from "./sequence.js";

/** The sequence as it repeats straight on, begun at a stripe's edge: a stripe cut by the beginning is whole again. */
export function cyclicRuns<C>(sequence: Sequence<C>): { readonly moved: number; readonly repeat: Sequence<C> } {
  const first = item(sequence.runs, 0);
  const closed = sequence.runs.length > 1 && rotate({ sequence, by: first.ends }).runs.length < sequence.runs.length;
  const moved = closed ? sequence.ends - item(sequence.runs, sequence.runs.length - 1).ends : 0;
  return { moved, repeat: rotate({ sequence, by: moved }) };
}
