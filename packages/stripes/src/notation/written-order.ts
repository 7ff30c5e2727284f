import { refuseLength } from "../sequence/made-sequence.js";
import type { Stripe } from "../sequence/sequence.js";

/** A few characters can ask for any number of ends: text is read into no more than ten wide warps hold. */
export const MOST_WRITTEN_ENDS = 100_000;

/** Stripes gathered while an order is read, and their ends so far. */
export interface WrittenOrder<C> {
  readonly stripes: Stripe<C>[];
  ends: number;
}

/** Adds stripes as many times over; refused before memory is spent on more than a loom holds. */
export function addTimes<C>(
  refusedBy: string,
  order: WrittenOrder<C>,
  stripes: readonly Stripe<C>[],
  times: number,
): void {
  order.ends += times * stripes.reduce((sum, { ends }) => sum + ends, 0);
  if (order.ends > MOST_WRITTEN_ENDS) refuseLength(refusedBy, order.ends, MOST_WRITTEN_ENDS);
  for (let time = 0; time < times; time++) for (const stripe of stripes) order.stripes.push(stripe);
}
