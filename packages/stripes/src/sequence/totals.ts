import type { Sequence } from "./sequence.js";

/** Ends of each colour, in the order in which the colours first appear. */
export function totalsOf<C>(sequence: Sequence<C>): ReadonlyMap<C, number> {
  const totals = new Map<C, number>();
  for (const { colour, ends } of sequence.runs) totals.set(colour, (totals.get(colour) ?? 0) + ends);
  return totals;
}
