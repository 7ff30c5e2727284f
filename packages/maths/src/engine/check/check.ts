import { Decimal, decimalText, kept } from "../numbers.js";
import type { Quantity, Unit } from "../quantity/index.js";
import {
  countsInUnit,
  declarationOf,
  folded,
  formulaStyle,
  outOfFrame,
  parseLines,
  run,
  stepsOf,
  treeText,
} from "../formula/index.js";
import type { Calculation, Line, Run } from "../formula/index.js";
import { readClaim, requireClaimUnit } from "./claim.js";
import type { Claim } from "./claim.js";
import { mutationsOf } from "./mutations.js";
import { percentageSlips } from "./percentages.js";

/** A slip that gives just the number claimed. */
export interface FoundSlip {
  /** "a sum that … gives this" */
  readonly says: string;
  /** What the sum with the slip comes to, in the unit of the claim. */
  readonly value: string;
}

/** What can be said of a claim. */
export interface Verdict {
  readonly right: boolean;
  /** The exact answer rounded, halves up, to the digits the claim was written to. */
  readonly rounded: string;
  readonly exact: string;
  /** The slips that give the claim, each alone; empty for a right claim or where no known slip does. */
  readonly slips: readonly FoundSlip[];
}

/** A number of the answer's own kind, counted in the unit of the claim. */
function inClaimUnit({ declared, frame, unit }: Run, value: Decimal, wanted: Unit<string> | null): Decimal {
  if (unit === null || wanted === null) return value;
  if (!countsInUnit(declared)) return outOfFrame(frame, value, wanted);
  const over = new Decimal(unit.scale[0]).times(wanted.scale[1]);
  return value.times(over).div(new Decimal(unit.scale[1]).times(wanted.scale[0]));
}

/** What is summed, however it is divided into lines: a slip declared in the trade's words stands for its bare twin. */
function sumOf(lines: readonly Line[]): string {
  return treeText(
    folded(lines),
    formulaStyle((name) => name),
  );
}

/** The formulas of the known slips: small changes of the formula, and those declared beside it. */
function slipsOf(worked: Run): readonly { readonly says: string; readonly lines: readonly Line[] }[] {
  const { declared, inputs } = worked;
  const whole = folded(declared.lines);
  const name = declared.lines.at(-1)?.name ?? "";
  const changed = [...mutationsOf(whole, inputs), ...percentageSlips(whole, inputs)];
  const declaredSlips = declared.slips.map(({ says, instead }) => {
    const replaced = new Map(parseLines(instead).map((line) => [line.name, line]));
    return { says, lines: declared.lines.map((line) => replaced.get(line.name) ?? line) };
  });
  const worded = new Set(declaredSlips.map(({ lines }) => sumOf(lines)));
  const unworded = changed.map(({ says, tree }) => ({ says, lines: [{ name, tree }] }));
  return [...declaredSlips, ...unworded.filter(({ lines }) => !worded.has(sumOf(lines)))];
}

/** The right answer under another unit's name: units of the inputs are the ones a reader mixes up. */
function unitSlips(worked: Run, value: Decimal, wanted: Unit<string> | null): readonly (readonly [string, Decimal])[] {
  if (wanted === null) return [];
  const units = new Map<string, Unit<string>>();
  for (const read of worked.inputs.values()) {
    for (const one of read.what === "list" ? read.members : [read]) {
      if ("unit" in one && one.unit.dimension === wanted.dimension) units.set(one.unit.name, one.unit);
    }
  }
  units.delete(wanted.name);
  return [...units.values()].map((unit) => [
    `reckons in ${unit.symbol} and calls them ${wanted.symbol}`,
    inClaimUnit(worked, value, unit),
  ]);
}

/**
 * Judges an answer somebody worked out, and names the slips that would give it.
 *
 * A claim is right when the exact answer, rounded halves up to the digits written, is the claim.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param claim the number as written, and its unit
 * @throws QuantityError "unreadable" for a claim that is no number, "wrong-kind" for a unit of another kind
 */
export function check<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  input: NoInfer<I>,
  claim: Claim<D>,
): Verdict {
  const worked = run(declarationOf("check", calculation), input);
  const { declared, unit, steps, values, nearness } = worked;
  const where = `check(${declared.name}, …, { written })`;
  const { written, unit: claimUnit } = Object(claim) as Claim<D>;
  const [claimed, decimals] = readClaim(where, written);
  requireClaimUnit(`check(${declared.name}, …, { unit })`, unit, claimUnit);
  const inFrame = steps.at(-1)?.value as Decimal;
  const rounded = (value: Decimal): Decimal => value.toDecimalPlaces(decimals, Decimal.ROUND_HALF_UP);
  const exact = kept(inClaimUnit(worked, inFrame, claimUnit));
  const right = rounded(exact).eq(claimed);
  const slips: FoundSlip[] = [];
  const consider = (says: string, slipped: Decimal): void => {
    const value = kept(slipped);
    if (!rounded(value).eq(claimed) || slips.some((found) => found.says === says)) return;
    slips.push({ says: `a sum that ${says} gives this`, value: decimalText(value.toSignificantDigits(12)) });
  };
  if (!right) {
    for (const { says, lines } of slipsOf(worked)) {
      const { steps: slipped, failed } = stepsOf(lines, values, nearness);
      const last = failed === null ? slipped.at(-1)?.value : undefined;
      if (last !== undefined && !Array.isArray(last)) consider(says, inClaimUnit(worked, last as Decimal, claimUnit));
    }
    for (const [says, value] of unitSlips(worked, inFrame, claimUnit)) consider(says, value);
  }
  return { right, rounded: rounded(exact).toFixed(decimals), exact: decimalText(exact.toSignificantDigits(34)), slips };
}
