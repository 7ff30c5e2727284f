import { type Check, check } from "../refusal/check.js";
import { fields, whole } from "../refusal/kinds.js";

/** How often the first colour comes first in its pair: so many times out of so many. */
export interface Lead {
  readonly times: number;
  readonly outOf: number;
}

const MOST = 1_000_000;

const aLead: Check = (value, path) => {
  const found = fields({ times: whole(0, MOST), outOf: whole(1, MOST) })(value, path);
  if (found.length > 0) return found;
  const { times, outOf } = value as Lead;
  return whole(0, outOf)(times, [...path, "times"]);
};

export const MOST_PAIRS = 2000;

export function checkPairs(refusedBy: string, input: unknown, others: Readonly<Record<string, Check>>): void {
  check(refusedBy, input, { pairs: whole(1, MOST_PAIRS), lead: aLead, ...others });
}
