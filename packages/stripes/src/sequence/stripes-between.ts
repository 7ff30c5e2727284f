import { item } from "./item.js";
import { stripe } from "./made-sequence.js";
import { runIndex } from "./run-index.js";
import type { Sequence, Stripe } from "./sequence.js";

/** The stripes one sees after one cut and up to another, which the caller knows to be in order and inside. */
export function stripesBetween<C>({ runs, starts }: Sequence<C>, after: number, upTo: number): Stripe<C>[] {
  const part: Stripe<C>[] = [];
  if (after === upTo) return part;
  const first = runIndex(starts, after + 1);
  let start = after;
  let end = item(starts, first) - 1;
  // A walk, because Array.slice of a frozen list takes several times as long.
  for (let index = first; start < upTo; index++) {
    const run = item(runs, index);
    end = Math.min(end + run.ends, upTo);
    part.push(end - start === run.ends ? run : stripe(run.colour, end - start));
    start = end;
  }
  return part;
}
