import { fraction, type Fraction } from "./fraction.js";
import { checkPairs, type Lead } from "./lead.js";

export interface PairOutlookInput {
  /** Pairs of one thread of each colour wound together, their order within the pair left to chance. */
  readonly pairs: number;
  readonly lead: Lead;
}

export interface PairOutlook {
  readonly ends: number;
  /** Ends of each colour: exactly so many, whatever the order. */
  readonly ofEach: number;
  /** Orders that can come about, as digits. */
  readonly orders: string;
  /** Orders that look different on cloth that may be turned round. */
  readonly ordersUpToMirror: string;
  /** Orders that read the same from both sides. */
  readonly palindromes: string;
  readonly fewestRuns: number;
  readonly mostRuns: number;
  /** Longest run of one colour that can come about. */
  readonly longestRun: number;
  readonly meanRuns: Fraction;
  readonly varianceOfRuns: Fraction;
  /** Neighbours of one colour to expect: a double needs two pairs that meet. */
  readonly meanDoubles: Fraction;
  /** Chance that the last end of one pair and the first of the next are alike; light on light is half of it. */
  readonly doubleChance: Fraction;
  /** Chance of strict alternation from side to side. */
  readonly noDoubleChance: Fraction;
  /** Odd ends of the first colour to expect. */
  readonly meanOnOddEnds: Fraction;
  /** Runs to expect if as many ends of each colour lay in wholly random order. */
  readonly meanRunsWithoutPairs: number;
}

/**
 * What random order within each pair can look like, and what it cannot: never a run of three.
 *
 * @throws StripeError for a lead of more times than it is out of
 * @example pairOutlook({ pairs: 8, lead: { times: 1, outOf: 2 } }).longestRun // 2
 */
export function pairOutlook(input: PairOutlookInput): PairOutlook {
  checkPairs("pairOutlook", input, {});
  const { pairs } = input;
  const [n, p, of] = [BigInt(pairs), BigInt(input.lead.times), BigInt(input.lead.outOf)];
  const q = of - p;
  const joins = n - 1n;
  const orders = 2n ** n;
  const palindromes = n % 2n === 0n ? 2n ** (n / 2n) : 0n;
  const double = 2n * p * q;
  // Two doubles in a row depend on one another unless the lead is even: the covariance is pq − (2pq)².
  const dependent = n > 1n ? 2n * (n - 2n) * (p * q * of * of - double * double) : 0n;
  return {
    ends: 2 * pairs,
    ofEach: pairs,
    orders: String(orders),
    ordersUpToMirror: String((orders + palindromes) / 2n),
    palindromes: String(palindromes),
    fewestRuns: pairs + 1,
    mostRuns: 2 * pairs,
    longestRun: pairs > 1 ? 2 : 1,
    meanRuns: fraction(2n * n * of * of - joins * double, of * of),
    varianceOfRuns: fraction(joins * double * (of * of - double) + dependent, of ** 4n),
    meanDoubles: fraction(joins * double, of * of),
    doubleChance: fraction(double, of * of),
    noDoubleChance: fraction(p ** n + q ** n, of ** n),
    meanOnOddEnds: fraction(n * p, of),
    meanRunsWithoutPairs: pairs + 1,
  };
}
