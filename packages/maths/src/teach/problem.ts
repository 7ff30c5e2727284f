import { Decimal, decimalText } from "../engine/numbers.js";
import { described } from "../engine/quantity/index.js";
import type { Quantity } from "../engine/quantity/index.js";
import { declarationOf, readInputs, run } from "../engine/formula/index.js";
import type { Calculation, Read, Run } from "../engine/formula/index.js";
import { explain } from "../engine/working/index.js";
import { allOf, digitsEarned, inUnitOf, sceneOf } from "../check/index.js";
import type { Scene, Weighed } from "../check/index.js";
import { missingOr, reading, refuse } from "../engine/refusal.js";
import type { FaultPath, RefusalCode } from "../engine/refusal.js";
import { drawFrom, drawnLike } from "./draw.js";
import { keyOf, questionOf } from "./sheet.js";
import type { Problem, ProblemWanted } from "./sheet.js";
import { hiddenWeight, slipKey } from "./slip-key.js";

/** So many sets of inputs are drawn; the one where least hides behind the rounding is taken. */
const DRAWN = 8;
const TRIES = 200;
/** An answer so many times larger or smaller than that of the pattern is of a size no weaver meets. */
const SIZE = 2.2;
const MOST_DECIMALS = 4;
/** Of a number that another sum gave, no more figures are taken as written. */
const MOST_FIGURES = 12;

interface Drawn {
  readonly input: unknown;
  readonly worked: Run;
  readonly scene: Scene;
  readonly exact: Decimal;
  readonly all: readonly Weighed[];
  readonly hidden: number;
}

function refuseFor(
  name: string,
  code: RefusalCode,
  path: FaultPath,
  expected: string,
  received: string,
  remedy = "",
): never {
  refuse(code, ["problem", ...path], expected, received, remedy, { calculation: name });
}

function wholeNumber(name: string, field: string, given: unknown, most: number): number {
  if (Number.isSafeInteger(given) && (given as number) >= 0 && (given as number) <= most) return given as number;
  const expected = `a whole number from 0 to ${String(most)}`;
  return refuseFor(name, missingOr(given, "not-whole"), [field], expected, described(given));
}

/** Numbers of a question as they stand in it, for the figures they have earned the answer. */
function asWritten(inputs: ReadonlyMap<string, Read>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...inputs].flatMap(([name, read]) =>
      read.what === "quantity" ? [[name, decimalText(read.value.toSignificantDigits(MOST_FIGURES))]] : [],
    ),
  );
}

/**
 * A problem for a class: inputs of a weaver's sizes, easily worked by hand, with key and slip key. The same seed gives the same
 * problem. Wrong sums that hide behind the rounding are named in the key.
 *
 * @param calculation any calculation of the handbook
 * @param wanted `like`, an input whose units the problem takes and whose numbers are about as large; `keep`, the names of inputs that
 *   stay what they are there, as the answer of an earlier sum does; the unit the answer is wanted in; the decimals, those the
 *   numbers have earned where none are named, none for a count; the seed
 * @throws QuantityError "no-answer" when the formula refuses all that is drawn, "wrong-kind" for a unit the answer cannot have,
 *   "missing" without a seed or with nothing wanted, "not-whole" for decimals or a seed that is none; for `like` also what the calculation itself would throw
 * @example
 * const like = { ends: 300, sett: endsPerInch(15) };
 * problem(reedWidth, { like, unit: inches, decimals: 2, seed: 4 }).question.says[0]; // "Find the reed width."
 */
export function problem<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  wanted: ProblemWanted<NoInfer<I>, D>,
): Problem<I, D> {
  const declared = declarationOf("problem", calculation);
  const { name } = declared;
  if (Object(wanted) !== wanted) {
    const expected = "what is wanted of the problem";
    return refuseFor(name, missingOr(wanted, "wrong-kind"), ["wanted"], expected, described(wanted));
  }
  const { like, unit, decimals: digits, seed, keep = [] } = wanted;
  const draw = drawFrom(wholeNumber(name, "seed", seed, 0xffffffff));
  const asked = digits === undefined ? null : wholeNumber(name, "decimals", digits, 12);
  const pattern = run(declared, like);
  const { unitVerdict, exact: size } = inUnitOf("problem", pattern, unit);
  if (unitVerdict === "missing" || unitVerdict === "not wanted" || unitVerdict === "of another kind") {
    const expected =
      pattern.unit === null ? "null: the answer is a plain number" : `a unit for ${declared.result.noun}`;
    return refuseFor(name, "wrong-kind", ["unit"], expected, described(unit));
  }
  const kept = new Set<string>(keep);
  const read = readInputs(name, declared.inputs, like);
  const inReach = (exact: Decimal): boolean =>
    size.isZero() || (exact.lte(size.times(SIZE)) && exact.gte(size.div(SIZE)));
  const earned = (input: unknown): number => {
    const { decimals } = digitsEarned(
      calculation,
      input as I,
      asWritten(run(declared, input).inputs) as { readonly [K in keyof I]?: string },
    );
    return Math.min(MOST_DECIMALS, Math.max(0, decimals ?? 0));
  };
  const decimals = declared.result.what === "whole" ? 0 : (asked ?? earned(like));
  const drawn = (): Drawn | null => {
    const input = drawnLike(declared, read, kept, draw);
    const tried = reading(() => run(declared, input));
    if (!tried.ok) return null;
    const worked = tried.value;
    const { exact, unit: own } = inUnitOf("problem", worked, unit);
    if (!inReach(exact)) return null;
    const scene = sceneOf(worked, own);
    const all = allOf(scene, exact.toNumber());
    return { input, worked, scene, exact, all, hidden: hiddenWeight(all, exact.toNumber(), decimals) };
  };
  let best: Drawn | null = null;
  for (let [found, tries] = [0, 0]; found < DRAWN && tries < TRIES; tries += 1) {
    const one = drawn();
    if (one === null) continue;
    found += 1;
    if (best === null || one.hidden < best.hidden) best = one;
    if (best.hidden === 0) break;
  }
  if (best === null) {
    const remedy = "Give numbers of another size.";
    const expected = "inputs of these sizes that the formula takes";
    return refuseFor(name, "no-answer", [], expected, `none among ${String(TRIES)} drawn`, remedy);
  }
  const { input, worked, scene, exact, all } = best;
  const sheet = { worked, working: explain(calculation, input as I), unit, decimals, seed };
  const answer = exact.toFixed(decimals, Decimal.ROUND_HALF_UP);
  const key = slipKey(scene, all, exact.toNumber(), decimals);
  return { input: input as I, unit, decimals, question: questionOf(sheet), key: keyOf(sheet, answer, key) };
}
