import { Decimal, decimalText } from "../engine/numbers.js";
import type { Quantity } from "../engine/quantity/index.js";
import { declarationOf, run } from "../engine/formula/index.js";
import type { Calculation, Run } from "../engine/formula/index.js";
import { inWords } from "../engine/working/index.js";
import type { Claim } from "./claim.js";
import { baseQuestion, conventionsOf } from "./conventions.js";
import { costOf } from "./cost.js";
import { cellOf } from "./plain-slip.js";
import { factsOf } from "./facts.js";
import { allOf, foundFor, hidden, lineToLookAt } from "./found.js";
import { judgedBy } from "./judged.js";
import type { Judged } from "./judged.js";
import { forUse, reachOf } from "./nearly.js";
import type { Scene } from "./reason.js";
import { NO_PAIRS, pairsOf } from "./pairs.js";
import { sceneOf } from "./reasons.js";
import { sentencesOf } from "./sentences.js";
import { tellApart } from "./tell-apart.js";
import type { Verdict } from "./verdict.js";
import { ALIKE } from "./tolerances.js";

/** The rule by which a claim is right that is wrong by the formula's own; null where there is none. */
function otherConvention(scene: Scene, claimed: number, step: number): "adding" | "dividing" | null {
  const found = conventionsOf(scene).find(({ value }) => cellOf(value, step) === cellOf(claimed, step));
  return found?.rule ?? null;
}

/** A claim by the other convention: what it is off by, and what to ask. */
function conventionNote(rule: "adding" | "dividing", scene: Scene, { exact, claimed, unit, rounded }: Judged): string {
  const off = claimed.minus(rounded(exact));
  const amount = `${decimalText(off.abs())}${unit === null ? "" : ` ${unit.symbol}`}`;
  const side = off.isNegative() ? "short" : "over";
  const own = rule === "adding" ? "dividing" : "adding";
  return `By the ${own} rule it is ${side} by ${amount}. ${baseQuestion(scene)}`;
}

function unitNote({ unitVerdict }: Judged, { unit: own, declared }: Run): readonly string[] {
  const asked = inWords(own?.name ?? "");
  const told: Readonly<Partial<Record<typeof unitVerdict, string>>> = {
    "of another kind": `The answer is ${declared.result.noun}; that unit counts something else. The number is judged in ${asked}.`,
    missing: `The answer wants a unit; the number is judged in ${asked}.`,
    "not wanted": "The answer is a plain number and takes no unit.",
  };
  const note = told[unitVerdict];
  return note === undefined ? [] : [note];
}

/** Figures of a claim: those its step leaves of the answer. */
function figuresOf(exact: Decimal, step: Decimal): number {
  return Math.max(3, Math.floor(Math.log10(exact.abs().div(step).toNumber() || 1)) + 1);
}

/**
 * Judges an answer somebody worked out, and names what was done where the figures claimed bear it out.
 *
 * A claim is right when the exact answer, rounded halves up to the digits written, is the claim, or when it lies within a
 * tolerance the caller names. A wrong sum is named only where it explains the claim clearly better than a plain slip of
 * arithmetic: over all answers of a question at most one plain slip in fifty is given a name.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param claim the number as written, its unit, and what was asked of it
 * @throws QuantityError "unreadable" for a claim that is no number or a locale that is none, "unknown-unit" for a unit that is none
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
  const judged = judgedBy("check", worked, claim);
  const { claimed, decimals, step, asked, tolerance, exact, unitVerdict, rounded } = judged;
  const scene = sceneOf(worked, judged.unit);
  const [own, width] = [exact.toNumber(), step.toNumber()];
  const numbers = { exact: own, step: width, claimed: claimed.toNumber() };
  const isRight = rounded(exact).eq(claimed);
  const isNear = tolerance !== null && exact.minus(claimed).abs().lte(tolerance);
  const isCut = exact.div(step).toDecimalPlaces(0, Decimal.ROUND_DOWN).times(step).eq(claimed);
  const rule =
    isRight || isNear || judged.base === undefined ? null : otherConvention(scene, claimed.toNumber(), width);
  const reach = isRight ? 0 : reachOf(scene, own, figuresOf(exact, step));
  const near = reach === 0 ? 0 : reach + width / 2;
  const short = asked !== null && decimals < asked && step.gt(new Decimal(10).pow(-asked)) && !exact.eq(claimed);
  const valueOf = (): Verdict["value"] => {
    if (isNear) return "within the tolerance";
    if (short && exact.minus(claimed).abs().lt(step)) return "not finished";
    if (isRight) return "right";
    if (rule !== null) return `right by the ${rule} rule`;
    if (forUse(worked.declared.forUse, claimed, exact)) return "right, rounded for use";
    if (isCut) return "cut off, not rounded";
    return exact
      .minus(claimed)
      .abs()
      .lte(near * (1 + ALIKE))
      ? "right but for the last figure"
      : "wrong";
  };
  const value = valueOf();
  const isWrong = value === "wrong";
  const all = isWrong || !isNear ? allOf(scene, own) : [];
  const found = isWrong ? foundFor(scene, all, { ...numbers, near }) : { slips: [], wouldFit: [], behind: [] };
  const isUnit = unitVerdict === "as asked" || unitVerdict === "another of its kind" || unitVerdict === "none wanted";
  const isSound = isRight || isNear || rule !== null;
  const text =
    decimals > 0 || step.eq(1) ? rounded(exact).toFixed(decimals) : decimalText(rounded(exact).toSignificantDigits(12));
  const verdict = {
    right: isUnit && isSound && value !== "not finished",
    sound: isSound || value === "right but for the last figure" || value === "right, rounded for use",
    value,
    unit: unitVerdict,
    digits: claimed.eq(exact) ? "exact" : isRight ? "rounded" : isCut ? "cut off" : "not of the answer",
    rounded: text,
    exact: decimalText(exact.toSignificantDigits(34)),
    facts: isWrong ? factsOf(claimed.toFixed(decimals), claimed, exact, step, text) : [],
    slips: found.slips,
    wouldFit: found.wouldFit,
    tellApart: tellApart(found.behind, decimals),
    cost: isWrong ? costOf(scene, own, claimed.toNumber()) : null,
    lookAt: isWrong && found.slips.length === 0 ? lineToLookAt(scene, all, own, claimed.toNumber()) : null,
    pairs: () => (isWrong ? pairsOf(scene, all, numbers) : NO_PAIRS),
    unseen: isWrong ? [] : hidden(scene, all, own, width),
    notes: [...unitNote(judged, worked), ...(rule === null ? [] : [conventionNote(rule, scene, judged)])],
  } satisfies Omit<Verdict, "says">;
  return { ...verdict, says: sentencesOf(verdict, judged, claim.written) };
}
