import { Decimal, decimalText, kept } from "../numbers.js";
import type { Quantity } from "../quantity/index.js";
import { declarationOf, folded, run, stepsOf } from "../formula/index.js";
import type { Calculation, Run } from "../formula/index.js";
import { inWords } from "../working/index.js";
import type { Claim } from "./claim.js";
import { baseQuestion, conventionsOf } from "./conventions.js";
import { costOf } from "./cost.js";
import { judgedBy } from "./judged.js";
import type { Judged } from "./judged.js";
import { matchesOf } from "./matches.js";
import { tellApart } from "./tell-apart.js";
import { told } from "./told.js";
import type { Verdict } from "./verdict.js";

/** The rule by which a claim is right that is wrong by the formula's own; null where there is none. */
function otherConvention({ declared, inputs, values, nearness }: Run, { claimed, rounded, toClaim }: Judged) {
  const found = conventionsOf(folded(declared.lines), inputs).find(({ tree }) => {
    const end = stepsOf([{ name: "answer", tree }], values, nearness).steps[0]?.value;
    return end instanceof Decimal && rounded(kept(toClaim(end))).eq(claimed);
  });
  return found?.rule ?? null;
}

/** A claim by the other convention: what it is off by, and what to ask. */
function conventionNote(
  rule: "adding" | "dividing",
  { inputs }: Run,
  { exact, claimed, unit, rounded }: Judged,
): string {
  const off = claimed.minus(rounded(exact));
  const amount = `${decimalText(off.abs())}${unit === null ? "" : ` ${unit.symbol}`}`;
  const side = off.isNegative() ? "short" : "over";
  const own = rule === "adding" ? "dividing" : "adding";
  return `By the ${own} rule it is ${side} by ${amount}. ${baseQuestion(inputs)}`;
}

function unitNote({ unitVerdict, unit }: Judged, { unit: own, declared }: Run): readonly string[] {
  const [asked, given] = [own, unit].map((one) => inWords(one?.name ?? ""));
  const told: Readonly<Partial<Record<typeof unitVerdict, string>>> = {
    "another of its kind": `The answer comes in ${asked}; one in ${given} is as good, and the number is judged so.`,
    "of another kind": `The answer is ${declared.result.noun}; that unit counts something else. The number is judged in ${asked}.`,
    missing: `The answer wants a unit; the number is judged in ${asked}.`,
    "not wanted": "The answer is a plain number and takes no unit.",
  };
  const note = told[unitVerdict];
  return note === undefined ? [] : [note];
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
 * @throws QuantityError "unreadable" for a claim that is no number, "unknown-unit" for a unit that is none
 * @example
 * const input = { ends: 300, sett: endsPerInch(15) };
 * check(reedWidth, input, { written: "20.0", unit: inches }).says[0]; // "20.0 in is right: the exact answer."
 */
export function check<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  input: NoInfer<I>,
  claim: Claim<D>,
): Verdict {
  const worked = run(declarationOf("check", calculation), input);
  const judged = judgedBy(worked, claim);
  const { claimed, decimals, tolerance, exact, unitVerdict, rounded } = judged;
  const isRight = rounded(exact).eq(claimed);
  const isNear = tolerance !== null && exact.minus(claimed).abs().lte(tolerance);
  const isCut = exact.toDecimalPlaces(decimals, Decimal.ROUND_DOWN).eq(claimed);
  const rule = isRight || isNear || judged.base === undefined ? null : otherConvention(worked, judged);
  const value = isRight
    ? "right"
    : isNear
      ? "within the tolerance"
      : rule !== null
        ? (`right by the ${rule} rule` as const)
        : isCut
          ? "cut off, not rounded"
          : "wrong";
  const isFaulty = value === "wrong" || value === "cut off, not rounded";
  const matched = isFaulty || isRight ? matchesOf(worked, judged) : [];
  const found = matched.map(({ says, line, value: text }) => ({ says, line, value: text }));
  const isWrong = value === "wrong";
  const inFrame = worked.steps.at(-1)?.value as Decimal;
  const isUnit = unitVerdict === "as asked" || unitVerdict === "another of its kind" || unitVerdict === "none wanted";
  const verdict = {
    right: isUnit && (isRight || isNear || rule !== null),
    value,
    unit: unitVerdict,
    digits: claimed.eq(exact) ? "exact" : isRight ? "rounded" : isCut ? "cut off" : "not of the answer",
    rounded: rounded(exact).toFixed(decimals),
    exact: decimalText(exact.toSignificantDigits(34)),
    slips: isFaulty ? found : [],
    tellApart: isFaulty ? tellApart(matched, decimals, worked.steps) : null,
    cost: isWrong ? costOf(worked, inFrame.times(claimed).div(exact.isZero() ? 1 : exact)) : null,
    unseen: isRight ? found : [],
    notes: [...unitNote(judged, worked), ...(rule === null ? [] : [conventionNote(rule, worked, judged)])],
  } satisfies Omit<Verdict, "says">;
  return { ...verdict, says: told(verdict, claim.written, judged.unit?.symbol ?? "") };
}
