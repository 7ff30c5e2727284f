import { decimalText } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { declarationOf, dimensionsOf, run, stepsOf } from "../formula/index.js";
import type { Calculation, Run } from "../formula/index.js";
import type { Quantity } from "../quantity/index.js";
import type { Told } from "../working/index.js";
import { misnamed, roundedOff } from "./answer-slips.js";
import type { AnswerSlip } from "./answer-slips.js";
import type { Claim } from "./claim.js";
import { judgedBy } from "./judged.js";
import { slipsOf } from "./slips.js";
import type { Slip } from "./slips.js";
import { nearClaim, sumWith } from "./sums.js";

/** Two slips that give the claim together, and neither of them alone. */
export interface FoundPair {
  readonly slips: readonly [first: string, second: string];
  /** What the sum with both comes to, in the unit of the claim. */
  readonly value: string;
}

/** The pairs of slips that give a claim; `says` tells them in sentences, with how many fit. */
export interface FoundPairs extends Told {
  /** The likeliest first, at most a dozen. */
  readonly pairs: readonly FoundPair[];
  /** How many pairs give the claim at the digits written: the more, the less any of them tells. */
  readonly fitting: number;
}

const LISTED = 12;
/** How far down the list the second belongs where it stands at the answer: a slip in the formula is likelier. */
const AT_THE_END = 5;

/** The formula as the first slip leaves it, for a second to be made in; null where nothing comes of it. */
function slipped(worked: Run, { lines, line, values }: Slip): Run | null {
  const own = line === "" ? values : worked.values;
  const { steps, failed } = stepsOf(lines, own, worked.nearness);
  return failed === null ? { ...worked, declared: { ...worked.declared, lines }, values: own, steps } : null;
}

function sentencesOf(pairs: readonly FoundPair[], fitting: number): readonly string[] {
  const listed = fitting > pairs.length ? `the ${String(pairs.length)} likeliest are listed` : "the likeliest first";
  const head =
    fitting < 2
      ? `${fitting === 0 ? "No" : "One"} pair of known slips gives this.`
      : `${String(fitting)} pairs of known slips give this, ${listed}. Many fit by chance: ask for the working.`;
  return [head, ...pairs.map(({ slips: [first, second] }) => `A sum that ${first}, and ${second}, gives this.`)];
}

/**
 * The pairs of known slips that give a wrong claim together, where neither does alone. Many pairs fit any number by chance, so
 * `check` never names them: ask only where it has found nothing.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param claim the number as written and its unit; none is looked for where it is right
 * @throws QuantityError "unreadable" for a claim that is no number, "unknown-unit" for a unit that is none
 * @example checkPairs(reedWidth, { ends: 300, sett: endsPerInch(15) }, { written: "20", unit: inches }).fitting // 0
 */
export function checkPairs<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  input: NoInfer<I>,
  claim: Claim<D>,
): FoundPairs {
  const worked = run(declarationOf("checkPairs", calculation), input);
  const judged = judgedBy(worked, claim);
  const { claimed, exact, unit, rounded } = judged;
  const gives = (number: Decimal): boolean => rounded(number).eq(claimed) && !number.eq(exact);
  const isNear = nearClaim(judged);
  const singles = rounded(exact).eq(claimed) ? [] : slipsOf(worked);
  const powers = dimensionsOf(worked.declared);
  const atTheEnd = (answer: Decimal): readonly AnswerSlip[] => [...misnamed(answer, unit), ...roundedOff(answer)];
  const alone = new Set([
    ...singles.filter(isNear).map(({ says }) => says()),
    ...atTheEnd(exact).flatMap(([says, number]) => (gives(number) ? [says] : [])),
  ]);
  const found = new Map<string, { readonly rank: number; readonly pair: FoundPair }>();
  const put = (rank: number, number: Decimal | undefined, first: string, second: string): void => {
    const key = [first, second].sort((a, b) => (a < b ? -1 : 1)).join("\n");
    if (number === undefined || !gives(number) || first === second || alone.has(second) || found.has(key)) return;
    const value = decimalText(number.toSignificantDigits(12));
    const slips = [first.replace(/,$/u, ""), second.replace(/,$/u, "")] as const;
    found.set(key, { rank, pair: { slips, value } });
  };
  for (const first of singles) {
    const after = slipped(worked, first);
    const end = sumWith(first, worked, judged)?.number;
    if (after === null || end === undefined || end.eq(exact) || alone.has(first.says())) continue;
    for (const second of slipsOf(after, powers).filter(isNear))
      put(first.rank + second.rank, sumWith(second, worked, judged)?.number, first.says(), second.says());
    for (const [says, number] of atTheEnd(end)) put(first.rank + AT_THE_END, number, first.says(), says);
  }
  const pairs = [...found.values()]
    .sort((a, b) => a.rank - b.rank)
    .slice(0, LISTED)
    .map(({ pair }) => pair);
  return { pairs, fitting: found.size, says: sentencesOf(pairs, found.size) };
}
