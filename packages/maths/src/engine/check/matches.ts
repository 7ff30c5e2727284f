import { Decimal, decimalText, kept } from "../numbers.js";
import { folded, formulaStyle, stepsOf, treeText } from "../formula/index.js";
import type { Run, Step, Value } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { misnamed, roundedOff, spoiled } from "./answer-slips.js";
import type { AnswerSlip } from "./answer-slips.js";
import type { Judged } from "./judged.js";
import { otherNumbers } from "./other-numbers.js";
import { roughAnswer, roughly } from "./roughly.js";
import type { Rough } from "./roughly.js";
import { slipsOf } from "./slips.js";
import type { Slip } from "./slips.js";
import type { FoundSlip } from "./verdict.js";

/** A slip that gives the claim, with what tells it apart from another. */
export interface Matched extends FoundSlip {
  readonly number: Decimal;
  readonly steps: readonly Step[];
}

/** What is summed, however it is divided into lines: a slip declared in the trade's words stands for its bare twin. */
function sumOf({ lines, line, says }: Slip): string {
  const text = treeText(
    folded(lines),
    formulaStyle((name) => name),
  );
  return line === "" ? `${says()} ${text}` : text;
}

/** A hundred slips are looked through in doubles; only what comes near the claim is worked out exactly. */
function near(worked: Run, { claimed, decimals, toClaim }: Judged): readonly Slip[] {
  const rough = new Map<unknown, ReturnType<typeof roughly>>();
  const seen = new Map<Value, Rough>();
  const [factor, target] = [toClaim(new Decimal(1)).toNumber(), claimed.toNumber()];
  const reach = 0.501 * 10 ** -decimals + 1e-8 * Math.abs(target);
  return slipsOf(worked)
    .filter(({ lines, from, values }) => {
      const known = rough.get(values) ?? roughly(values, seen);
      rough.set(values, known);
      return Math.abs(roughAnswer(lines.slice(from), known) * factor - target) <= reach;
    })
    .sort((a, b) => a.rank - b.rank);
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
  for (const slip of near(worked, judged)) {
    const { steps, failed } = stepsOf(slip.lines.slice(slip.from), slip.values, worked.nearness);
    const end = steps.at(-1)?.value;
    if (failed !== null || !(end instanceof Decimal)) continue;
    const number = kept(toClaim(end));
    if (!gives(number) || sums.has(sumOf(slip))) continue;
    sums.add(sumOf(slip));
    put(slip.says(), slip.line === "" ? "" : inWords(slip.line), number, steps);
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
