import { refuse } from "../refusal/check.js";
import type { Pivots } from "./full-sett.js";
import { item } from "./item.js";
import { madeSequence, stripe } from "./made-sequence.js";
import type { Sequence, Stripe } from "./sequence.js";

/** The full sett of one already checked. */
export function fullSettOf<C>(refusedBy: string, sett: Sequence<C>, pivots: Pivots): Sequence<C> {
  if (pivots === "repeating") return sett;
  const { runs, ends } = sett;
  if (runs.length === 1) {
    refuse(refusedBy, "does-not-fit", ["sett"], {
      expected: "a half sett of two stripes or more",
      received: `one stripe of ${ends} ends`,
      remedy: 'Cloth of one colour has no pivots: say "repeating".',
    });
  }
  const times = pivots === "half count" ? 2 : 1;
  const pivot = (index: number): Stripe<C> => stripe(item(runs, index).colour, item(runs, index).ends * times);
  const inner = runs.slice(1, -1);
  return madeSequence(refusedBy, [pivot(0), ...inner, pivot(runs.length - 1), ...[...inner].reverse()]);
}
