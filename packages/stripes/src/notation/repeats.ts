import { item } from "../sequence/item.js";
import { sameStripe } from "../sequence/same-stripe.js";
import type { Stripe } from "../sequence/sequence.js";

export interface Repeat<C> {
  readonly group: readonly Stripe<C>[];
  readonly times: number;
}

/** A longer bracket is no help to the eye, and looking for one takes too long. */
const LONGEST_GROUP = 60;

/** Stripes gathered into groups that repeat, the group that covers most first; a stripe alone is a group once. */
export function repeats<C>(stripes: readonly Stripe<C>[]): readonly Repeat<C>[] {
  const found: Repeat<C>[] = [];
  for (let from = 0; from < stripes.length;) {
    let best = { size: 1, times: 1 };
    for (let size = 2; size <= LONGEST_GROUP && from + 2 * size <= stripes.length; size++) {
      const times = timesOver(stripes, from, size);
      if (times > 1 && times * size > best.times * best.size) best = { size, times };
    }
    found.push({ group: stripes.slice(from, from + best.size), times: best.times });
    from += best.size * best.times;
  }
  return found;
}

function timesOver<C>(stripes: readonly Stripe<C>[], from: number, size: number): number {
  let next = from + size;
  while (next < stripes.length && sameStripe(item(stripes, next), item(stripes, next - size))) next++;
  return Math.floor((next - from) / size);
}
