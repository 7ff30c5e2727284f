import fc from "fast-check";
import { check, QuantityError } from "@thrum/maths";
import { slipsOf } from "../packages/maths/src/engine/check/slips.js";
import { run, stepsOf } from "../packages/maths/src/engine/formula/index.js";
import { countsInUnit, outOfFrame } from "../packages/maths/src/engine/formula/index.js";
import type { Run } from "../packages/maths/src/engine/formula/index.js";
import { calculations, validInput } from "./inputs.js";

/** What became of claims made with one slip each, at so many figures. */
export interface Shares {
  readonly figures: number;
  claims: number;
  /** Named, and nothing else with it. */
  unique: number;
  /** Named among others that give the same number. */
  tied: number;
  /** To these figures the right answer, or its digits cut off. */
  hidden: number;
  missed: number;
  /** Right answers called wrong. */
  accused: number;
}

type Sum = (typeof calculations)[number][1];

function written(value: number, figures: number): string | null {
  const decimals = figures - 1 - Math.floor(Math.log10(Math.abs(value)));
  return value > 1e-9 && value < 1e12 ? value.toFixed(Math.max(0, decimals)) : null;
}

function workedThrough(calculation: Sum, input: unknown): Run | null {
  try {
    return run(calculation.declaration, input);
  } catch (error) {
    if (error instanceof QuantityError) return null;
    throw error;
  }
}

/** What each slip makes of the answer, in the unit of the answer; one that changes nothing is none. */
function slippedAnswers(worked: Run): readonly number[] {
  const { unit, frame, declared, nearness, value } = worked;
  return slipsOf(worked).flatMap(({ lines, from, values }) => {
    const { steps, failed } = stepsOf(lines.slice(from), values, nearness);
    const end = steps.at(-1)?.value;
    if (failed !== null || end === undefined || Array.isArray(end)) return [];
    const own = end as typeof value;
    const number = unit === null || countsInUnit(declared) ? own : outOfFrame(frame, own, unit);
    return number.minus(value).abs().lte(value.abs().times("1e-12")) ? [] : [number.toNumber()];
  });
}

/** Random inputs of every calculation, slips of each, and whether `check` names them; the same for the same seed. */
export function simulate(options: {
  readonly seed: number;
  readonly inputs: number;
  readonly slips: number;
}): Shares[] {
  const table = [2, 3, 4].map((figures) => ({
    ...{ figures, claims: 0, unique: 0, tied: 0, hidden: 0, missed: 0, accused: 0 },
  }));
  for (const [, calculation] of calculations) {
    for (const input of fc.sample(validInput(calculation), { numRuns: options.inputs, seed: options.seed })) {
      const worked = workedThrough(calculation, input);
      if (worked === null) continue;
      const judge = (text: string): ReturnType<typeof check> =>
        check(calculation as never, input as never, { written: text, unit: worked.unit });
      const all = slippedAnswers(worked);
      const stride = Math.max(1, Math.floor(all.length / options.slips));
      for (const shares of table) {
        const own = written(worked.value.toNumber(), shares.figures);
        if (own !== null && !judge(judge(own).rounded).right) shares.accused += 1;
        for (const number of all.filter((_, at) => at % stride === 0)) {
          const text = written(number, shares.figures);
          if (text === null) continue;
          const { value, slips } = judge(text);
          shares.claims += 1;
          const isNamed = slips.some((one) => Math.abs(Number(one.value) / number - 1) < 1e-9);
          if (value !== "wrong") shares.hidden += 1;
          else if (!isNamed) shares.missed += 1;
          else if (slips.length === 1) shares.unique += 1;
          else shares.tied += 1;
        }
      }
    }
  }
  return table;
}
