import { check } from "../refusal/check.js";
import { whole } from "../refusal/kinds.js";
import { fraction, type Fraction } from "./fraction.js";
import { MOST_PAIRS } from "./lead.js";

export interface GroupOutlookInput {
  readonly groups: number;
  /** Threads in a group, each of another colour, in random order. */
  readonly threads: number;
}

export interface GroupOutlook {
  readonly ends: number;
  readonly meanRuns: Fraction;
  readonly longestRun: number;
  /** Chance that the last end of one group and the first of the next are alike. */
  readonly doubleChance: Fraction;
}

/**
 * What to expect of groups of several colours wound together, each group in random order.
 *
 * @throws StripeError for a group of fewer than two threads
 * @example groupOutlook({ groups: 3, threads: 3 }).longestRun // 2
 */
export function groupOutlook(input: GroupOutlookInput): GroupOutlook {
  check("groupOutlook", input, { groups: whole(1, MOST_PAIRS), threads: whole(2, 100) });
  const [n, k] = [BigInt(input.groups), BigInt(input.threads)];
  return {
    ends: input.groups * input.threads,
    meanRuns: fraction(k * k * n - (n - 1n), k),
    longestRun: input.groups > 1 ? 2 : 1,
    doubleChance: fraction(1n, k),
  };
}
