import { expect, it } from "vitest";
import { closed, open } from "#ci/slips/wrong-methods/index.js";
import { calculationOf, questionOf, unitNamed } from "#ci/slips/wrong-methods/question.js";
import { check } from "../check/index.js";
import { isQuantity } from "../engine/quantity/index.js";
import { asText } from "../engine/working/index.js";
import { problem } from "./index.js";

const SEEDS = [1, 2, 3, 4, 5];

/** Every number of an input, in the unit it was given in, with what it measures. */
function numbersOf(input: unknown): readonly (readonly [size: number, measures: string])[] {
  if (typeof input === "number") return [[input, "number"]];
  if (isQuantity(input)) return [[Number(input.value), input.dimension]];
  if (typeof input !== "object" || input === null) return [];
  return Object.values(input).flatMap(numbersOf);
}

/** A weaver's size: no more than about twice, no less than about half of what the corpus gives, which is woven so. */
function isOfASize(drawn: number, given: number): boolean {
  return given < 5 ? Math.abs(drawn - given) <= 5 : drawn <= 2.5 * given && drawn >= given / 2.5;
}

it("252 problems and more: parts stay within their whole, keys are right, sizes are a weaver's", () => {
  const [faults, strange]: [string[], string[]] = [[], []];
  let made = 0;
  for (const sum of [...open, ...closed]) {
    const { input } = questionOf(sum, 0);
    const [calculation, unit] = [calculationOf(sum), unitNamed(sum.asked)];
    const given = numbersOf(input);
    const total = (numbers: typeof given) =>
      numbers.reduce((all, [size, measures]) => (measures === "share" ? all + size : all), 0);
    for (const seed of SEEDS) {
      const { key, input: own, question } = problem<unknown, string>(calculation as never, { like: input, unit, seed });
      const drawn = numbersOf(own);
      const here = `${sum.formula}, seed ${String(seed)}: ${JSON.stringify(own)}`;
      made += 1;
      const verdict = check(calculation as never, own as never, { written: key.answer, unit });
      if (verdict.value !== "right") faults.push(`key ${key.answer}, ${here}`);
      if (/undefined|NaN|Infinity| 1 decimals/u.test(asText(question))) faults.push(`words, ${here}`);
      if (drawn.some(([size, measures]) => ["loss", "share"].includes(measures) && !(size >= 0 && size <= 100)))
        faults.push(`more than the whole, ${here}`);
      if (total(given) === 100 && Math.abs(total(drawn) - 100) > 1e-9) faults.push(`parts of no whole, ${here}`);
      const isStrange = drawn.some(([size], at) => !isOfASize(size, given[at]?.[0] ?? size));
      if (isStrange || drawn.length !== given.length) strange.push(here);
    }
  }
  expect(made).toBeGreaterThanOrEqual(252);
  expect(faults).toEqual([]);
  expect(strange.length / made, strange.join("\n")).toBeLessThanOrEqual(0.05);
});
