import { type Check, check } from "../refusal/check.js";
import { listOf, whole } from "../refusal/kinds.js";
import { fraction, type Fraction, lowest } from "./fraction.js";
import { MOST_PAIRS } from "./lead.js";

const MOST_THREADS = 100;

export interface GroupOutlookInput {
  readonly groups: number;
  /** Threads in a group, each of another colour, in random order; a list says how many there are of each colour. */
  readonly threads: number | readonly number[];
}

export interface GroupOutlook {
  readonly ends: number;
  /** Orders that can come about, as digits. */
  readonly orders: string;
  readonly meanRuns: Fraction;
  /** Longest run of one colour that can come about. */
  readonly longestRun: number;
  /** Chance that the last end of one group and the first of the next are alike. */
  readonly doubleChance: Fraction;
}

/**
 * What to expect of groups of several threads wound together, each group in random order.
 *
 * @throws StripeError for a group of fewer than two threads
 * @example groupOutlook({ groups: 3, threads: [2, 1] }).orders // "27"
 */
export function groupOutlook(input: GroupOutlookInput): GroupOutlook {
  check("groupOutlook", input, { groups: whole(1, MOST_PAIRS), threads: oneOrEach });
  const { groups, threads } = input;
  const each = typeof threads === "number" ? Array.from({ length: threads }, () => 1) : threads;
  const inGroup = each.reduce((sum, of) => sum + of, 0);
  check("groupOutlook", { threads: inGroup }, { threads: whole(2, MOST_THREADS) });
  const [n, k] = [BigInt(groups), BigInt(inGroup)];
  const squares = each.reduce((sum, of) => sum + BigInt(of) * BigInt(of), 0n);
  // Of the k − 1 joins within a group those part two colours of which Σcᵢ(cᵢ − 1) ÷ k(k − 1) do not.
  const withinOne = lowest(k * k - (squares - k), k);
  const most = each.reduce((so, of) => Math.max(so, of), 0);
  const isOneColour = most === inGroup;
  return {
    ends: groups * inGroup,
    orders: String((factorial(inGroup) / each.reduce((so, of) => so * factorial(of), 1n)) ** n),
    meanRuns: fraction(n * withinOne.over * k * k - (n - 1n) * squares * withinOne.under, withinOne.under * k * k),
    longestRun: isOneColour ? groups * inGroup : groups > 1 ? 2 * most : most,
    doubleChance: fraction(squares, k * k),
  };
}

function factorial(number: number): bigint {
  let product = 1n;
  for (let factor = 2; factor <= number; factor++) product *= BigInt(factor);
  return product;
}

const oneOrEach: Check = (value, where) =>
  (Array.isArray(value) ? listOf(1, whole(1, MOST_THREADS)) : whole(2, MOST_THREADS))(value, where);
