import { check } from "../refusal/check.js";
import { whole } from "../refusal/kinds.js";
import { fraction, type Fraction } from "./fraction.js";

/**
 * Chance that threads of several pairs in one place, paired again at random, all find their own partner.
 *
 * @throws StripeError for a number of pairs that is not whole
 * @example blindPairingChance({ pairs: 2 }).denominator // "3"
 */
export function blindPairingChance(input: { readonly pairs: number }): Fraction {
  check("blindPairingChance", input, { pairs: whole(1, 500) });
  let ways = 1n;
  // The first thread left has one fewer partners each time two are taken away.
  for (let partners = 2 * input.pairs - 1; partners > 1; partners -= 2) ways *= BigInt(partners);
  return fraction(1n, ways);
}
