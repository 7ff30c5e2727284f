import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, unitOf, validInput } from "#ci/inputs.js";
import { dentsForEnds, reedWidth, warpLength } from "../../handbook/index.js";
import { grams, inches, percentLost, yards } from "../../units/index.js";
import { check } from "../check/index.js";
import type { Quantity } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { asText } from "../working/index.js";
import { problem } from "./index.js";
import type { Problem } from "./index.js";

const like = {
  pieces: 8,
  finishedLength: inches(21),
  hemEachEnd: inches("1.5"),
  loomToFinished: percentLost(10),
  takeUp: percentLost(8),
  loomWaste: inches(30),
};
const wanted = { like, unit: yards, decimals: 3, seed: 7 };

describe("a problem about the length of a warp", () => {
  const { question, key, input, unit } = problem(warpLength, wanted);

  it("states each number with its unit and meaning, and each percentage with what it was measured on", () => {
    const text = asText(question);
    expect(text).toMatch(/^finished length: [\d.]+ in, one piece, washed and hemmed$/mu);
    expect(text).toMatch(/^take-up: \d+ % of what was there before, of the thread, from wound to weaving tension$/mu);
    expect(text).toContain("Write the answer to 3 decimals, halves up, in yd.");
  });

  it("has a blank for each line with its unit, and marks for method, value and unit", () => {
    expect(question.blanks.map(({ unit: own }) => own)).toEqual(["in", "in", "in", "yd"]);
    expect(question.marks).toHaveLength(4);
    expect(asText(question)).toContain("warp = ________ yd (method 1, value 1, unit 1)");
  });

  it("says on both sheets which problem it is", () => {
    for (const page of [question, key]) expect(asText(page)).toMatch(/version 1, seed 7/u);
  });

  it("is the same for the same seed, and another for another", () => {
    expect(problem(warpLength, wanted).question).toEqual(question);
    expect(problem(warpLength, { ...wanted, seed: 8 }).question.inputs).not.toEqual(question.inputs);
  });

  it("has numbers of at most two decimals, from half to twice as large", () => {
    for (const { value } of question.inputs) expect(value).toMatch(/^\d+(?:\.(?:25|5|75))?(?: |$)/u);
    const { finishedLength } = input;
    expect(finishedLength.in(inches)).toBeGreaterThanOrEqual(10.5);
    expect(finishedLength.in(inches)).toBeLessThanOrEqual(42);
  });

  it("is answered by its own key", () => {
    expect(check(warpLength, input, { written: key.answer, unit }).right).toBe(true);
    expect(key.slips.map(({ says }) => says[0]).join("\n")).toContain("of take-up instead of dividing it out");
  });
});

describe("a problem that cannot be made", () => {
  it("is refused where a zero hides a slip, never made with fewer slips", () => {
    const bare = { ...wanted, like: { ...like, hemEachEnd: inches(0) } };
    expect(() => problem(warpLength, bare)).toThrow("expected a number above zero, received 0");
  });

  it("is refused for a unit the answer cannot have, for decimals and seeds that are none, for inputs as the sum would", () => {
    expect(() => problem(warpLength, { ...wanted, unit: grams as never })).toThrow("expected a unit for a length");
    expect(() => problem(warpLength, { ...wanted, unit: null })).toThrow("expected a unit for a length");
    expect(() => problem(warpLength, { ...wanted, decimals: 1.5 })).toThrow("a whole number from 0 to 12");
    expect(() => problem(warpLength, { ...wanted, seed: -1 })).toThrow("a whole number from 0 to");
    expect(() => problem(warpLength, { ...wanted, like: { ...like, pieces: 0 } })).toThrow(QuantityError);
    expect(() => problem(warpLength, undefined as never)).toThrow(QuantityError);
    // @ts-expect-error an answer in inches is no plain number of ends
    expect(() => problem(reedWidth, { ...wanted, like: { ends: 300, sett: 15 } })).toThrow(QuantityError);
  });
});

describe("slips that no numbers tell apart", () => {
  it("stand as one with the sentence of each: without the take-up the sum stops at the line before", () => {
    const { key } = problem(warpLength, wanted);
    const one = key.slips.find(({ says }) => says[0]?.includes("of take-up out"));
    expect(one?.says).toContain("a sum that stops at on loom gives this");
  });

  it("are never left out: a count rounded up hides one end too many, or the rounding, and is refused", () => {
    const ends = { like: { ends: 300, endsPerDent: 7 }, unit: null, decimals: 0, seed: 1 };
    expect(() => problem(dentsForEnds, ends)).toThrow("inputs for which every known slip gives another answer");
  });
});

/** The first problem that can be made of a calculation, from random inputs and at few or more decimals. */
function made(calculation: (typeof calculations)[number][1]): Problem<unknown, string> | null {
  for (const own of fc.sample(validInput(calculation), { numRuns: 3, seed: 3 })) {
    for (const decimals of [4]) {
      try {
        const answer = calculation(own) as number | Quantity<string>;
        const unit = typeof answer === "number" ? null : unitOf(answer);
        return problem(calculation as never, { like: own, unit, decimals, seed: 1 });
      } catch (error) {
        expect(error).toBeInstanceOf(QuantityError);
      }
    }
  }
  return null;
}

describe("of the whole handbook", () => {
  it("nearly every formula makes a problem, and the check names each slip of its key", () => {
    const sample = calculations.filter((_, at) => at % 6 === 2);
    const not: string[] = [];
    for (const [name, calculation] of sample) {
      const one = made(calculation);
      if (one === null) {
        not.push(name);
        continue;
      }
      const judge = (written: string): ReturnType<typeof check> =>
        check(calculation as never, one.input as never, { written, unit: one.unit });
      expect(judge(one.key.answer).right).toBe(true);
      for (const { answer, says } of one.key.slips) {
        const found = judge(answer).slips.map((slip) => slip.says);
        expect({
          name,
          answer,
          named: found.includes(says[0] ?? ""),
          others: found.filter((text) => !says.includes(text)),
        }).toEqual({ name, answer, named: true, others: [] });
      }
    }
    expect(not.length, not.join()).toBeLessThanOrEqual(sample.length * 0.15);
  });
});
