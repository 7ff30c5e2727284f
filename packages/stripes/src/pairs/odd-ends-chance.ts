import { whole } from "../refusal/kinds.js";
import { fraction, type Fraction } from "./fraction.js";
import { checkPairs, type Lead } from "./lead.js";

export interface OddEndsChanceInput {
  readonly pairs: number;
  readonly lead: Lead;
  /** Odd ends of the first colour: the ends one shed lifts in plain weave. */
  readonly count: number;
}

/**
 * Chance that exactly so many odd ends are of the first colour.
 *
 * @throws StripeError for a lead of more times than it is out of
 * @example oddEndsChance({ pairs: 8, lead: { times: 1, outOf: 2 }, count: 8 }).denominator // "256"
 */
export function oddEndsChance(input: OddEndsChanceInput): Fraction {
  checkPairs("oddEndsChance", input, { count: whole(0) });
  const { pairs, lead, count } = input;
  if (count > pairs) return fraction(0n, 1n);
  let ways = 1n;
  for (let one = 1; one <= count; one++) ways = (ways * BigInt(pairs - count + one)) / BigInt(one);
  const [times, outOf] = [BigInt(lead.times), BigInt(lead.outOf)];
  const chance = times ** BigInt(count) * (outOf - times) ** BigInt(pairs - count);
  return fraction(ways * chance, outOf ** BigInt(pairs));
}
