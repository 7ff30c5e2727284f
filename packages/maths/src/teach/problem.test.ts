import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { closed, open } from "#ci/slips/wrong-methods/index.js";
import { calculationOf, questionOf, unitNamed } from "#ci/slips/wrong-methods/question.js";
import {
  blendRegain,
  combinedAddition,
  countFromShare,
  dentsForEnds,
  reedWidth,
  resultantCount,
  settByDiameter,
  warpLength,
} from "../handbook/index.js";
import {
  cottonCount,
  endsPerInch,
  grams,
  inches,
  percentAdded,
  percentLost,
  percentOf,
  yards,
  yardsPerPound,
} from "../units/index.js";
import { check } from "../check/index.js";
import { asText } from "../engine/working/index.js";
import { problem } from "./index.js";

const like = { ...napkins, hemEachEnd: inches("1.5") };
const wanted = { like, unit: yards, decimals: 3, seed: 7 };

describe("a problem about the length of a warp", () => {
  const { question, key, input, unit } = problem(warpLength, wanted);

  it("states each number with its unit and meaning, and each percentage with what it was measured on", () => {
    const text = asText(question);
    expect(text).toMatch(/^finished length: [\d.]+ in, one piece, washed and hemmed$/mu);
    expect(text).toMatch(/^take-up: \d+ % of what was there before, of the thread, from wound to weaving tension$/mu);
    expect(text).toContain("Write the answer to 3 decimals, halves up, in yards.");
  });

  it("has a blank for each line with its unit, and marks for method, value and unit", () => {
    expect(question.blanks.map(({ unit: own }) => own)).toEqual(["in", "in", "in", "yd"]);
    expect(question.marks).toHaveLength(4);
    expect(asText(question)).toContain("warp = ________ yd (method 1, value 1, unit 1)");
  });

  it("says on both sheets which problem it is", () => {
    for (const page of [question, key]) expect(asText(page)).toMatch(/version 2, seed 7/u);
  });

  it("is the same for the same seed, and another for another", () => {
    expect(problem(warpLength, wanted).question).toEqual(question);
    expect(problem(warpLength, { ...wanted, seed: 8 }).question.inputs).not.toEqual(question.inputs);
  });

  it("has numbers of at most two decimals, of a size with those given, and whole per cents", () => {
    for (const { value } of question.inputs) expect(value).toMatch(/^\d+(?:\.(?:25|5|75))?(?: |$)/u);
    const { finishedLength, takeUp } = input;
    expect(finishedLength.in(inches)).toBeGreaterThanOrEqual(14);
    expect(finishedLength.in(inches)).toBeLessThanOrEqual(30);
    expect(Number.isInteger(takeUp.in(percentLost))).toBe(true);
  });

  it("is answered by its own key, which is short and sorted by number", () => {
    expect(check(warpLength, input, { written: key.answer, unit }).right).toBe(true);
    const answers = key.slips.map(({ answer }) => Number(answer));
    expect(answers).toEqual([...answers].sort((a, b) => a - b));
    expect(answers).toHaveLength(12);
    expect(key.moreSlips.length).toBeGreaterThan(12);
    expect(key.slips.flatMap(({ says }) => says).join("\n")).toContain("loom to finished instead of dividing it out");
    expect(key.says[1]).toMatch(/ in is [\d.]+ yd\.$/u);
  });

  it("asks no figure its numbers have not earned where no decimals are named", () => {
    expect(problem(warpLength, { like, unit: yards, seed: 7 }).decimals).toBeLessThanOrEqual(1);
  });

  it("keeps what an earlier sum of the same job gave", () => {
    const kept = problem(warpLength, { ...wanted, keep: ["finishedLength", "pieces"] });
    expect(kept.input.finishedLength.in(inches)).toBe(21);
    expect(kept.input.pieces).toBe(8);
  });
});

describe("a problem that cannot be made", () => {
  it("takes a zero as it is, and names what hides there", () => {
    const bare = problem(warpLength, { ...wanted, like: { ...like, hemEachEnd: inches(0) } });
    expect(bare.input.hemEachEnd.in(inches)).toBe(0);
  });

  it("is refused for a unit the answer cannot have, for decimals and seeds that are none, for inputs as the sum would", () => {
    expect(() => problem(warpLength, { ...wanted, unit: grams as never })).toThrow("expected a unit for a length");
    expect(() => problem(warpLength, { ...wanted, unit: null })).toThrow("expected a unit for a length");
    expect(() => problem(warpLength, { ...wanted, decimals: 1.5 })).toThrow("a whole number from 0 to 12");
    expect(() => problem(warpLength, { ...wanted, seed: -1 })).toThrow("a whole number from 0 to");
    expect(() => problem(warpLength, { ...wanted, like: { ...like, pieces: 0 } })).toThrow(
      "warpLength({ pieces }): expected a whole number of pieces, 1 or more",
    );
    expect(() => problem(warpLength, undefined as never)).toThrow(
      "problem({ wanted }): expected what is wanted of the problem, received nothing",
    );
    // @ts-expect-error an answer in inches is no plain number of ends
    expect(() => problem(reedWidth, { ...wanted, like: { ends: 300, sett: 15 } })).toThrow(
      "reedWidth({ sett }): expected a sett",
    );
  });
});

describe("a problem like a case of its own", () => {
  it("is drawn from a whole added, from more plies than listed, from figures another sum gave", () => {
    const whole = { first: percentAdded(100), second: percentAdded(100) };
    const added = problem(combinedAddition, { like: whole, unit: percentAdded, seed: 1 });
    expect(added.key.answer).toBe("300");
    const plies = { count: cottonCount(24), plies: 15 };
    expect(problem(resultantCount, { like: plies, unit: cottonCount, seed: 1 }).input.plies).toBeGreaterThan(4);
    const third = percentOf("14.2857142857142857142857142857142857");
    const { share } = problem(countFromShare, {
      like: { folded: cottonCount(8), share: third },
      unit: cottonCount,
      seed: 1,
    }).input;
    expect(Number.isInteger(share.in(percentOf))).toBe(true);
  });
});

describe("a problem about a count", () => {
  const ends = problem(dentsForEnds, { like: { ends: 300, endsPerDent: 7 }, unit: null, seed: 1 });

  it("says how the formula rounds, asks no decimals, and tells the teacher what the rounding hides", () => {
    expect(asText(ends.question)).toContain("Write the answer in whole dents only, rounded up.");
    expect(ends.key.answer).toMatch(/^\d+$/u);
    const hides = problem(dentsForEnds, {
      like: { ends: 307, endsPerDent: 7 },
      keep: ["ends", "endsPerDent"],
      unit: null,
      seed: 1,
    });
    // 307 ÷ 7 is 43.9, and so is 306 ÷ 7 43.7: 44 either way.
    expect(hides.key.hidden.length).toBeGreaterThan(0);
  });
});

describe("of the whole handbook", () => {
  it("problems of weavers' sizes come of sums as given, their key right by their check", () => {
    const not: string[] = [];
    for (const sum of [...open, ...closed].filter((_, at) => at % 4 === 1)) {
      const { input } = questionOf(sum, 0);
      const calculation = calculationOf(sum);
      const unit = unitNamed(sum.asked);
      const one = problem<unknown, string>(calculation as never, { like: input, unit, seed: 3 });
      const verdict = check(calculation as never, one.input as never, { written: one.key.answer, unit });
      if (verdict.value !== "right") not.push(sum.formula);
      expect(one.key.slips.length).toBeLessThanOrEqual(12);
      expect(one.question.says.join(" ")).not.toContain(" 1 decimals");
    }
    expect(not).toEqual([]);
  });

  it("parts of one whole still add up to it, and the constant of a rule stays", () => {
    const shares = [percentOf(60), percentOf(40)];
    const regains = [percentAdded("18.25"), percentAdded("8.5")];
    for (const seed of [1, 2, 3, 4, 5]) {
      const blend = problem(blendRegain, { like: { shares, regains }, unit: percentAdded, seed }).input;
      expect(blend.shares.map((one) => one.in(percentOf)).reduce((a, b) => a + b)).toBe(100);
      const rule = { constant: 0.9, count: yardsPerPound(3360), ends: 4, intersections: 2 };
      expect(problem(settByDiameter, { like: rule, unit: endsPerInch, decimals: 1, seed }).input).toMatchObject({
        constant: 0.9,
        ends: 4,
      });
    }
  });
});
