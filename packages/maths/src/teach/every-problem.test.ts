import { expect, it } from "vitest";
import * as maths from "../index.js";
import { argumentsOf, cases } from "../verification/self-test.js";
import { check } from "../check/index.js";
import { isCalculation } from "../engine/formula/index.js";
import type { AnyCalculation } from "../engine/formula/index.js";
import { isQuantity, unitOf } from "../engine/quantity/index.js";
import { asText } from "../engine/working/index.js";
import { problem } from "./index.js";

type Input = Readonly<Record<string, unknown>>;
const SEEDS = [11, 12];

/** Lists and reports (satin, creelList, tieOn …) are no one expression: they have no declaration, and `problem` takes none. */
const calculations = Object.entries<unknown>({ ...maths }).flatMap(([name, one]) =>
  isCalculation(one) ? [[name, one] as const] : [],
);

/** The inputs of every cited case of a formula whose answer is not nothing. */
function given(name: string, calculation: AnyCalculation): readonly Input[] {
  const own = cases.filter(({ call }) => call === name).map((one) => argumentsOf(one)[0] as Input);
  return own.filter((input) => {
    const answer = calculation(input);
    return Number(isQuantity(answer) ? answer.value : answer) !== 0;
  });
}

/** Every number of an input with its place, lists as one place, and the unit it was given in. */
function numbersOf(input: unknown, place = ""): readonly (readonly [place: string, size: number])[] {
  if (typeof input === "number") return [[place, input]];
  if (isQuantity(input)) return [[`${place} ${input.unit}`, Number(input.value)]];
  if (typeof input !== "object" || input === null) return [];
  return Object.entries(input).flatMap(([key, one]) =>
    numbersOf(one, Array.isArray(input) ? place : `${place}.${key}`),
  );
}

const isNear = (drawn: number, size: number): boolean =>
  (size < 5 && Number.isInteger(size) && Math.abs(drawn - size) <= 5) ||
  (Math.abs(drawn) <= 2.5 * Math.abs(size) && Math.abs(drawn) >= Math.abs(size) / 2.5);

const total = (input: Input): number =>
  Object.values(input)
    .flatMap((one) => (Array.isArray(one) ? (one as unknown[]) : []))
    .reduce<number>((sum, one) => (isQuantity(one) && one.dimension === "share" ? sum + Number(one.value) : sum), 0);

it("every formula can be drawn: keys right, nothing contradictory, sizes as in the cited cases", () => {
  const [faults, strange]: [string[], string[]] = [[], []];
  let made = 0;
  for (const [name, calculation] of calculations) {
    const known = given(name, calculation);
    const sizes = known.flatMap((input) => numbersOf(input));
    for (const seed of SEEDS) {
      const like = known[seed % known.length];
      if (like === undefined) {
        faults.push(`${name}: no inputs to draw like`);
        continue;
      }
      const answer = calculation(like);
      const unit = isQuantity(answer) ? unitOf(answer) : null;
      const { input, key, question, decimals } = problem(calculation, { like, unit, seed });
      made += 1;
      const here = `${name}, seed ${String(seed)}: ${JSON.stringify(input)}, ${key.answer}`;
      const verdict = check(calculation, input, { written: key.answer, unit, decimals });
      if (verdict.value !== "right") faults.push(`key ${verdict.value}, ${here}`);
      if (/undefined|NaN|Infinity| 1 decimals/u.test(asText(question))) faults.push(`words, ${here}`);
      if (Math.abs(total(like) - 100) < 1e-9 && Math.abs(total(input) - 100) > 1e-9) faults.push(`no whole, ${here}`);
      const { atLeast, above, below, atMost } = calculation.declaration.result.range;
      const worked = calculation(input);
      const value = Number(isQuantity(worked) ? worked.value : worked) / (unit?.symbol === "%" ? 100 : 1);
      const isOut = value < (atLeast ?? -Infinity) || value <= (above ?? -Infinity);
      if (isOut || value >= (below ?? Infinity) || value > (atMost ?? Infinity)) faults.push(`out of range, ${here}`);
      const isOfSize = numbersOf(input).every(([place, drawn]) =>
        sizes.some(([other, size]) => other === place && (drawn === size || isNear(drawn, size))),
      );
      if (!isOfSize) strange.push(here);
    }
  }
  expect(calculations.length).toBeGreaterThanOrEqual(206);
  expect(made).toBeGreaterThanOrEqual(252);
  expect(faults).toEqual([]);
  expect(strange.length / made, strange.join("\n")).toBeLessThanOrEqual(0.05);
}, 120_000);
