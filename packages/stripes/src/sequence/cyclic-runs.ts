import { item } from "./item.js";
import { stripe } from "./made-sequence.js";
import { sameColour } from "./same-colour.js";
import type { Sequence, Stripe } from "./sequence.js";

/** The stripes as they repeat straight on, begun at an edge: one cut by the beginning of the repeat is whole again. */
export function cyclicRuns<C>({ runs, ends }: Sequence<C>): {
  /** Ends from the beginning of the repeat to that edge. */
  readonly begins: number;
  readonly runs: readonly Stripe<C>[];
} {
  const [first, last] = [item(runs, 0), item(runs, runs.length - 1)];
  if (runs.length === 1 || !sameColour(first.colour, last.colour)) return { begins: 0, runs };
  return { begins: ends - last.ends, runs: [stripe(first.colour, last.ends + first.ends), ...runs.slice(1, -1)] };
}
