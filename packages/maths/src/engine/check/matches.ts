import { Decimal, decimalText } from "../numbers.js";
import { folded, formulaStyle, treeText } from "../formula/index.js";
import type { Run, Step } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { misnamed, roundedOff, spoiled } from "./answer-slips.js";
import type { AnswerSlip } from "./answer-slips.js";
import type { Judged } from "./judged.js";
import { otherNumbers } from "./other-numbers.js";
import { slipsOf } from "./slips.js";
import type { Slip } from "./slips.js";
import { nearClaim, sumWith } from "./sums.js";
import type { SlippedSum } from "./sums.js";
import type { FoundSlip } from "./verdict.js";

/** A slip that gives the claim, with what tells it apart from another. */
export interface Matched extends FoundSlip, SlippedSum {}

/** What is summed, however it is divided into lines: a slip declared in the trade's words stands for its bare twin. */
function sumOf({ lines, line, says }: Slip): string {
  const text = treeText(
    folded(lines),
    formulaStyle((name) => name),
  );
  return line === "" ? `${says()} ${text}` : text;
}

/** The slips that give the claim at the digits written, the likeliest first. */
export function matchesOf(worked: Run, judged: Judged): readonly Matched[] {
  const { claimed, decimals, exact, unit, toClaim, rounded } = judged;
  const matched: Matched[] = [];
  const sums = new Set<string>();
  const gives = (number: Decimal): boolean => rounded(number).eq(claimed) && !number.eq(exact);
  const put = (says: string, line: string, number: Decimal, steps: readonly Step[]): void => {
    const sentence = `a sum that ${says} gives this`;
    if (matched.some((found) => found.says === sentence)) return;
    matched.push({ says: sentence, line, value: decimalText(number.toSignificantDigits(12)), number, steps });
  };
  const near = slipsOf(worked).filter(nearClaim(judged));
  for (const slip of [...near].sort((a, b) => a.rank - b.rank)) {
    const end = sumWith(slip, worked, judged);
    if (end === null || !gives(end.number) || sums.has(sumOf(slip))) continue;
    sums.add(sumOf(slip));
    put(slip.says(), inWords(slip.line), end.number, end.steps);
  }
  const last = (slips: readonly AnswerSlip[]): void => {
    for (const [says, number] of slips) if (gives(number)) put(says, "", number, []);
  };
  last(misnamed(exact, unit));
  const isCut = exact.toDecimalPlaces(decimals, Decimal.ROUND_DOWN).eq(claimed);
  if (isCut || rounded(exact).eq(claimed)) return matched;
  last(roundedOff(exact));
  if (matched.length === 0) last(spoiled(exact, decimals));
  if (matched.length > 0) return matched;
  const [factor, target] = [toClaim(new Decimal(1)).toNumber(), claimed.toNumber()];
  const missed = (answer: number): number => Math.abs(answer * factor - target) * 10 ** decimals;
  for (const says of otherNumbers(worked, missed)) put(says, "", claimed, []);
  return matched;
}
