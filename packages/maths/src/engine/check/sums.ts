import { Decimal, kept } from "../numbers.js";
import { stepsOf } from "../formula/index.js";
import type { Run, Step, Value } from "../formula/index.js";
import type { Judged } from "./judged.js";
import { roughAnswer, roughly } from "./roughly.js";
import type { Rough } from "./roughly.js";
import type { Slip } from "./slips.js";

/** What a sum with a slip comes to, in the unit of the claim. */
export interface SlippedSum {
  readonly number: Decimal;
  readonly steps: readonly Step[];
}

/** The sum with a slip worked out exactly; null where it comes to nothing. */
export function sumWith({ lines, from, values }: Slip, { nearness }: Run, { toClaim }: Judged): SlippedSum | null {
  const { steps, failed } = stepsOf(lines.slice(from), values, nearness);
  const end = steps.at(-1)?.value;
  return failed === null && end instanceof Decimal ? { number: kept(toClaim(end)), steps } : null;
}

/** Sums with a slip in doubles, in the unit of the claim: what slips share is turned into doubles once. */
export function roughSums({ toClaim }: Judged): (slip: Slip) => number {
  const factor = toClaim(new Decimal(1)).toNumber();
  const turned = new Map<Value, Rough>();
  const known = new Map<unknown, ReturnType<typeof roughly>>();
  return ({ lines, from, values }) => {
    const rough = known.get(values) ?? roughly(values, turned);
    known.set(values, rough);
    return roughAnswer(lines.slice(from), rough) * factor;
  };
}

/** Whether a slip comes near a claim: a hundred are looked through in doubles before one is worked out exactly. */
export function nearClaim(judged: Judged): (slip: Slip) => boolean {
  const rough = roughSums(judged);
  const target = judged.claimed.toNumber();
  const reach = 0.501 * 10 ** -judged.decimals + 1e-8 * Math.abs(target);
  return (slip) => Math.abs(rough(slip) - target) <= reach;
}
