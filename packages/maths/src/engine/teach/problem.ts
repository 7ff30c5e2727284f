import { described } from "../quantity/index.js";
import type { Quantity } from "../quantity/index.js";
import { declarationOf, readInputs, run } from "../formula/index.js";
import type { Calculation, Declared, Read, Run } from "../formula/index.js";
import { explain } from "../working/index.js";
import { judgedBy, slipAnswers } from "../check/index.js";
import type { Judged, SlipAnswer } from "../check/index.js";
import { QuantityError, reading } from "../refusal.js";
import type { FaultPath, Refusal } from "../refusal.js";
import { drawFrom, drawnLike, hasZero } from "./draw.js";
import type { Draw } from "./draw.js";
import { keyOf, questionOf } from "./sheet.js";
import type { Problem, ProblemWanted } from "./sheet.js";
import { isTelling, sampled } from "./shows.js";
import type { Sample } from "./shows.js";
import { slipKey } from "./slip-key.js";

/** So many sets of inputs are drawn before any is chosen, so that slips which are always alike are known. */
const BATCH = 32;
const BATCHES = 6;

interface Drawn {
  readonly input: unknown;
  readonly worked: Run;
  readonly judged: Judged;
  readonly slips: readonly SlipAnswer[];
  readonly sample: Sample;
}

function refuse(name: string, fault: Omit<Refusal, "function" | "path">, ...path: FaultPath): never {
  throw new QuantityError({ function: "problem", path, ...fault, params: { calculation: name } });
}

function wholeNumber(name: string, field: string, given: unknown, most: number): number {
  if (Number.isSafeInteger(given) && (given as number) >= 0 && (given as number) <= most) return given as number;
  const expected = `a whole number from 0 to ${String(most)}`;
  return refuse(name, { code: "not-whole", expected, received: described(given), remedy: "" }, field);
}

/** One set of inputs worked through; null where the formula refuses it. */
function drawn(
  declared: Declared,
  like: ReadonlyMap<string, Read>,
  { unit, decimals }: Pick<ProblemWanted<unknown, string>, "unit" | "decimals">,
  draw: Draw,
): Drawn | null {
  const input = Object.fromEntries(
    [...like].map(([name, read]) => {
      const given = declared.inputs[name];
      return [name, drawnLike(read, (given?.member ?? given)?.what === "whole", draw)];
    }),
  );
  const tried = reading(() => run(declared, input));
  if (!tried.ok) return null;
  const judged = judgedBy(tried.value, { written: (0).toFixed(decimals), unit });
  const slips = slipAnswers(tried.value, judged);
  return { input, worked: tried.value, judged, slips, sample: sampled(judged.exact.toNumber(), decimals, slips) };
}

/**
 * A problem for a class: inputs easily worked by hand for which every known slip gives another rounded answer, with key and
 * slip key. The same seed gives the same problem.
 *
 * Slips that no inputs drawn tell apart at this rounding stand in the slip key as one, with the sentence of each.
 *
 * @param calculation any calculation of the handbook
 * @param wanted `like`, an input whose units the problem takes and whose numbers are about as large; the unit and the decimals the
 *   answer is wanted in; the seed
 * @throws QuantityError "no-answer" when no such inputs are among those drawn, "wrong-kind" for a unit the answer cannot have,
 *   "not-whole" for decimals or a seed that is none, "out-of-range" for a zero in `like`, where slips hide; for `like` also
 *   what the calculation itself would throw
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
  const { like, unit, decimals: digits, seed } = Object(wanted) as ProblemWanted<I, D>;
  const decimals = wholeNumber(name, "decimals", digits, 12);
  const draw = drawFrom(wholeNumber(name, "seed", seed, 0xffffffff));
  const pattern = run(declared, like);
  const { unitVerdict } = judgedBy(pattern, { written: "0", unit });
  if (unitVerdict === "missing" || unitVerdict === "not wanted" || unitVerdict === "of another kind") {
    const expected =
      pattern.unit === null ? "null: the answer is a plain number" : `a unit for ${declared.result.noun}`;
    return refuse(name, { code: "wrong-kind", expected, received: described(unit), remedy: "" }, "unit");
  }
  const read = readInputs(name, declared.inputs, like);
  const [empty] = [...read].find(([, one]) => hasZero(one)) ?? [];
  if (empty !== undefined) {
    const remedy = "A slip at a zero gives the right answer: give a number of the size the problem is to have.";
    return refuse(
      name,
      { code: "out-of-range", expected: "a number above zero", received: "0", remedy },
      "like",
      empty,
    );
  }
  const samples: Sample[] = [];
  for (let batch = 0; batch < BATCHES; batch += 1) {
    const found = Array.from({ length: BATCH }, () => drawn(declared, read, { unit, decimals }, draw));
    const fit = found.filter((one) => one !== null);
    samples.push(...fit.map(({ sample }) => sample));
    for (const { input, worked, judged, slips, sample } of fit) {
      const key = isTelling(sample, samples) ? slipKey(sample, slips, judged, decimals) : null;
      if (key === null) continue;
      const sheet = { worked, working: explain(calculation, input as I), unit, decimals, seed };
      const answer = judged.rounded(judged.exact).toFixed(decimals);
      return { input: input as I, unit, question: questionOf(sheet), key: keyOf(sheet, answer, key) };
    }
  }
  return refuse(name, {
    code: "no-answer",
    expected: "inputs for which every known slip gives another answer",
    received: `none among ${String(BATCH * BATCHES)} drawn`,
    remedy: "Ask for one more decimal, or give numbers of another size.",
  });
}
