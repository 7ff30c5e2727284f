import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { settSinglePage } from "#ci/sources.js";
import { cottonCount, endsPerInch, percentAdded, worstedCount, yardsPerPound } from "../../units/index.js";
import { basket } from "../weave/basket.js";
import { plainWeave } from "../weave/plain-weave.js";
import { satin } from "../weave/satin.js";
import { twill } from "../weave/twill.js";
import type { ComparedSettsInput } from "./compared-setts.js";
import { comparedSetts } from "./compared-setts.js";

const eightTwo: ComparedSettsInput = {
  weave: ["xx..", ".xx.", "..xx", "x..x"],
  count: yardsPerPound(3360),
  material: "cotton",
  wrapsPerInch: 36,
};

function perInch(input: ComparedSettsInput): Readonly<Record<string, number>> {
  return Object.fromEntries(comparedSetts(input).setts.map(({ rule, sett }) => [rule, sett.in(endsPerInch)]));
}

describe("rules side by side", () => {
  cited(
    "the lowest for 8/2 cotton in plain weave is by ends and intersections",
    published(settSinglePage, "whole page", "26", "26.08447814314098943269359548290558910"),
    comparedSetts,
    [{ ...eightTwo, weave: plainWeave, wrapsPerInch: "not wrapped" }],
    ["lowest", endsPerInch],
  );

  it("give 8/2 cotton in 2/2 twill from 24 ends by wraps to 42 by curvature", () => {
    const setts = perInch(eightTwo);
    expect(setts["ends and intersections, constant 0.9 by faena"]).toBeCloseTo(34.779304190854655, 9);
    expect(setts["ends and intersections, constant 0.95 by Taylor"]).toBeCloseTo(36.71148775701325, 9);
    expect(setts["Brierley"]).toBeCloseTo(1.3103934038583633 * Math.sqrt(800), 9);
    expect(setts["wraps"]).toBeCloseTo(24, 9);
    const { lowest, highest, spread, silent } = comparedSetts(eightTwo);
    expect(lowest.in(endsPerInch)).toBeCloseTo(24, 9);
    expect(highest.in(endsPerInch)).toBeCloseTo((0.95 * Math.sqrt(3360) * 4) / (4 + 2 * (Math.sqrt(3) - 1)), 9);
    expect(spread.in(percentAdded)).toBeCloseTo(100 * (highest.in(endsPerInch) / 24 - 1), 9);
    expect(silent).toEqual([{ rule: "jam of Peirce", why: "it is worked out for cotton in plain weave" }]);
  });

  it("say which of them are silent, and which are from memory", () => {
    const rules = (input: ComparedSettsInput): readonly string[] => comparedSetts(input).silent.map(({ rule }) => rule);
    const satinOfFive = { ...eightTwo, weave: satin({ ends: 5, move: 2 }), wrapsPerInch: "not wrapped" } as const;
    expect(rules(satinOfFive)).toEqual(["Brierley", "jam of Peirce", "wraps"]);
    expect(rules({ ...eightTwo, weave: basket({ together: 2 }) })).toEqual(["Brierley", "jam of Peirce"]);
    expect(rules({ ...eightTwo, weave: twill({ floats: [1, 3] }) })).toEqual(["jam of Peirce"]);
    expect(rules({ ...eightTwo, count: worstedCount(20), material: "worsted" })).toContain("Brierley");
    for (const { rule, status, holdsFor, source } of comparedSetts(eightTwo).setts) {
      expect(status).toBe(rule.startsWith("curvature") ? "from memory" : "read");
      expect(holdsFor.length * source.title.length).toBeGreaterThan(0);
    }
  });

  it("open their workings, whose last step is the sett", () => {
    for (const { sett, steps } of comparedSetts(eightTwo).setts) {
      const last = steps.at(-1) ?? expect.fail("no step");
      const answer = last.calculation(last.input);
      const told = typeof answer === "number" ? answer : (answer as typeof sett).in(endsPerInch);
      expect(sett.in(endsPerInch)).toBeCloseTo(told, 12);
    }
  });

  it("all grow with the count, and a weave drawn twice changes none", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (count) => {
        const input = { ...eightTwo, count: cottonCount(count), wrapsPerInch: "not wrapped" } as const;
        const [once, finer] = [perInch(input), perInch({ ...input, count: cottonCount(4 * count) })];
        const twice = perInch({ ...input, weave: [...input.weave, ...input.weave].map((row) => row + row) });
        for (const [rule, sett] of Object.entries(once)) {
          expect(finer[rule]).toBeCloseTo(2 * sett, 8);
          expect(twice[rule]).toBeCloseTo(sett, 8);
        }
      }),
      { numRuns: 20 },
    );
  });

  it("run from a single wrap to the inch on: half an end of it in plain weave, the most open of all", () => {
    // Of 2 ends and 2 intersections the wraps hold 1 × 2 ÷ (2 + 2) ends.
    const single = comparedSetts({ ...eightTwo, weave: plainWeave, wrapsPerInch: 1 });
    expect(single.lowest.in(endsPerInch)).toBe(0.5);
    expect(single.setts[0]?.rule).toBe("wraps");
    // Thick yarn of 4 yards to the pound: 0.9 √4 diameters to the inch, and half of them ends.
    const thick = { ...eightTwo, weave: plainWeave, count: yardsPerPound(4), wrapsPerInch: "not wrapped" } as const;
    expect(comparedSetts(thick).lowest.in(endsPerInch)).toBeCloseTo(0.9, 12);
  });

  it.each([
    ["half a wrap", { wrapsPerInch: 12.5 }, "wrong-kind wrapsPerInch"],
    ["no wrap", { wrapsPerInch: 0 }, "out-of-range wrapsPerInch"],
    ["wraps as a text", { wrapsPerInch: "12" }, "unknown-word wrapsPerInch"],
    ["wraps left out", { wrapsPerInch: undefined }, "missing wrapsPerInch"],
    ["a material no rule knows", { material: "nettle" }, "unknown-word material"],
    ["a weave that is none", { weave: ["xx", "xx"] }, "no-answer weave"],
    ["a weave of no picks", { weave: [] }, "empty weave"],
  ])("are refused for %s", (_, change, code) => {
    expect(codesOf(comparedSetts, { ...eightTwo, ...change })).toEqual([code]);
  });
});
