import { Decimal, decimalText, kept } from "../numbers.js";
import type { Quantity, Unit } from "../quantity/index.js";
import {
  countsInUnit,
  declarationOf,
  folded,
  formulaStyle,
  outOfFrame,
  run,
  stepsOf,
  treeText,
} from "../formula/index.js";
import type { Calculation, Run, Step } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { readClaim, requireClaimUnit } from "./claim.js";
import type { Claim } from "./claim.js";
import { costOf } from "./cost.js";
import { SIBLINGS } from "./sibling-units.js";
import { roughAnswer, roughly } from "./roughly.js";
import { slipsOf } from "./slips.js";
import type { Slip } from "./slips.js";
import { tellApart } from "./tell-apart.js";
import type { FoundSlip, Verdict } from "./verdict.js";

/** A number of the answer's own kind, counted in the unit of the claim. */
function inClaimUnit({ declared, frame, unit }: Run, value: Decimal, wanted: Unit<string> | null): Decimal {
  if (unit === null || wanted === null) return value;
  if (!countsInUnit(declared)) return outOfFrame(frame, value, wanted);
  const over = new Decimal(unit.scale[0]).times(wanted.scale[1]);
  return value.times(over).div(new Decimal(unit.scale[1]).times(wanted.scale[0]));
}

/** What is summed, however it is divided into lines: a slip declared in the trade's words stands for its bare twin. */
function sumOf({ lines, line, says }: Slip): string {
  const text = treeText(
    folded(lines),
    formulaStyle((name) => name),
  );
  return line === "" ? `${says()} ${text}` : text;
}

/** The right answer with its unit taken for another's. */
function misnamed(value: Decimal, wanted: Unit<string> | null): readonly (readonly [string, Decimal])[] {
  if (wanted === null) return [];
  const { symbol: own, scale, dimension } = wanted;
  return (SIBLINGS[dimension] ?? []).flatMap(([symbol, over, under]) => {
    const by = new Decimal(scale[0]).times(under).div(new Decimal(scale[1]).times(over));
    return [
      [`reckons in ${symbol} and calls them ${own}`, value.times(by)],
      [`takes ${own} for ${symbol} and converts them once more`, value.div(by)],
    ] as const;
  });
}

interface Matched extends FoundSlip {
  readonly number: Decimal;
  readonly steps: readonly Step[];
}

/**
 * Judges an answer somebody worked out, and names the slips that would give it.
 *
 * A claim is right when the exact answer, rounded halves up to the digits written, is the claim, or when it lies within a
 * tolerance the caller names.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param claim the number as written, its unit, and the tolerance if there is one
 * @throws QuantityError "unreadable" for a claim that is no number, "wrong-kind" for a unit of another kind
 */
export function check<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  input: NoInfer<I>,
  claim: Claim<D>,
): Verdict {
  const worked = run(declarationOf("check", calculation), input);
  const { declared, unit, steps, nearness } = worked;
  const { written, unit: claimUnit, within } = Object(claim) as Claim<D>;
  const [claimed, decimals, tolerance] = readClaim(`check(${declared.name}, …)`, written, within);
  requireClaimUnit(`check(${declared.name}, …, { unit })`, unit, claimUnit);
  const inFrame = steps.at(-1)?.value as Decimal;
  const rounded = (value: Decimal): Decimal => value.toDecimalPlaces(decimals, Decimal.ROUND_HALF_UP);
  const exact = kept(inClaimUnit(worked, inFrame, claimUnit));
  const isRight = rounded(exact).eq(claimed);
  const isNear = tolerance !== null && exact.minus(claimed).abs().lte(tolerance);
  const isCut = exact.toDecimalPlaces(decimals, Decimal.ROUND_DOWN).eq(claimed);
  const value = isRight ? "right" : isNear ? "within the tolerance" : isCut ? "cut off, not rounded" : "wrong";
  const matched: Matched[] = [];
  const sums = new Set<string>();
  const consider = (says: string, line: string, number: Decimal, worth: readonly Step[]): void => {
    if (matched.some((found) => found.says === says)) return;
    const text = decimalText(number.toSignificantDigits(12));
    matched.push({ says, line, value: text, number, steps: worth });
  };
  // A hundred slips are looked through in doubles; only what comes near the claim is worked out exactly.
  const rough = new Map<unknown, ReturnType<typeof roughly>>();
  const [factor, target] = [inClaimUnit(worked, new Decimal(1), claimUnit).toNumber(), claimed.toNumber()];
  const reach = 0.501 * 10 ** -decimals + 1e-8 * Math.abs(target);
  const isFar = ({ lines, from, values: read }: Slip): boolean => {
    const known = rough.get(read) ?? roughly(read);
    rough.set(read, known);
    return Math.abs(roughAnswer(lines.slice(from), known) * factor - target) > reach;
  };
  for (const slip of [...slipsOf(worked)].sort((a, b) => a.rank - b.rank)) {
    if (isFar(slip)) continue;
    const { steps: slipped, failed } = stepsOf(slip.lines.slice(slip.from), slip.values, nearness);
    const end = slipped.at(-1)?.value;
    if (failed !== null || !(end instanceof Decimal)) continue;
    const number = kept(inClaimUnit(worked, end, claimUnit));
    if (!rounded(number).eq(claimed) || number.eq(exact) || sums.has(sumOf(slip))) continue;
    sums.add(sumOf(slip));
    consider(`a sum that ${slip.says()} gives this`, slip.line === "" ? "" : inWords(slip.line), number, slipped);
  }
  for (const [says, number] of misnamed(exact, claimUnit)) {
    if (rounded(number).eq(claimed) && !number.eq(exact)) consider(`a sum that ${says} gives this`, "", number, []);
  }
  const found = matched.map(({ says, line, value: text }) => ({ says, line, value: text }));
  const isWrong = value === "wrong";
  return {
    right: isRight || isNear,
    value,
    unit: unit === null ? "none wanted" : unit.name === claimUnit?.name ? "as asked" : "another of its kind",
    rounded: rounded(exact).toFixed(decimals),
    exact: decimalText(exact.toSignificantDigits(34)),
    slips: isWrong ? found : [],
    tellApart: isWrong ? tellApart(matched, decimals, steps) : null,
    cost: isWrong ? costOf(worked, inFrame.times(claimed).div(exact.isZero() ? 1 : exact)) : null,
    unseen: isRight ? found : [],
  };
}
