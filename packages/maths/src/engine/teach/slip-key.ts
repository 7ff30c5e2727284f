import { Decimal } from "../numbers.js";
import type { Judged, SlipAnswer } from "../check/index.js";
import type { Sample } from "./shows.js";

/** A wrong answer and the slip that gives it; several sentences where no inputs tell the slips apart. */
export interface KeyedSlip {
  /** To the decimals the problem asks for, in its unit. */
  readonly answer: string;
  readonly says: readonly string[];
  /** The line of the formula the first stands at; empty where an input or the answer is misread. */
  readonly line: string;
}

/**
 * The slips by the answer each gives, worked out exactly; null where a double had misled, or the answer is too long to be
 * written.
 */
export function slipKey(
  { right }: Sample,
  slips: readonly SlipAnswer[],
  { rounded, exact: answer }: Judged,
  decimals: number,
): readonly KeyedSlip[] | null {
  const keyed = new Map<string, { readonly says: string[]; readonly line: string }>();
  const scale = new Decimal(10).pow(decimals);
  for (const { says, line, rough, exact } of slips) {
    const number = exact();
    if (number === null || number.eq(answer)) continue;
    const written = rounded(number);
    const steps = Math.floor(rough * scale.toNumber() + 0.5 + 1e-9);
    if (!written.times(scale).eq(steps) || steps === right) return null;
    const text = written.isZero() ? (0).toFixed(decimals) : written.toFixed(decimals);
    const sentence = `a sum that ${says()} gives this`;
    const known = keyed.get(text);
    if (known === undefined) keyed.set(text, { says: [sentence], line });
    else if (!known.says.includes(sentence)) known.says.push(sentence);
  }
  return [...keyed].map(([text, slip]) => ({ answer: text, ...slip }));
}
