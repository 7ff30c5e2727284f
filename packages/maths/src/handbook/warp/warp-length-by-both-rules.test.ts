import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { napkins } from "#ci/napkins.js";
import { commonPractice } from "#ci/sources.js";
import { inches, percentAdded, percentLost } from "../../units/index.js";
import { warpLengthByBothRules } from "./warp-length-by-both-rules.js";

describe("length of warp by both rules", () => {
  // 8 × 23 = 184; 184 ÷ 0.9 ÷ 0.92 + 30 = 2270/9; 184 × 1.18 + 30 = 6178/25.
  cited(
    "eight napkins, the losses divided out",
    byHand(commonPractice, "2270/9"),
    warpLengthByBothRules,
    [napkins],
    ["dividing", inches],
  );
  cited(
    "eight napkins, the percentages added",
    byHand(commonPractice, "6178/25"),
    warpLengthByBothRules,
    [napkins],
    ["adding", inches],
  );
  cited(
    "eight napkins, the rule of dividing less the rule of adding",
    byHand(commonPractice, "1148/225"),
    warpLengthByBothRules,
    [napkins],
    ["difference", inches],
  );
  it("sets 252 2/9 in beside 247.12 in, 5.10 in less", () => {
    const both = warpLengthByBothRules(napkins);
    expect(both.dividing.in(inches)).toBeCloseTo(2270 / 9, 12);
    expect(both.adding.in(inches)).toBe(247.12);
    expect(both.difference.in(inches)).toBeCloseTo(2270 / 9 - 247.12, 12);
    const [dividing, adding] = both.steps;
    expect([dividing.calculation(dividing.input), adding.calculation(adding.input)]).toEqual([
      both.dividing,
      both.adding,
    ]);
  });
  it("agree where nothing is lost, and else adding is the shorter", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), (shrinks, takesUp) => {
        const input = { ...napkins, loomToFinished: percentLost(shrinks), takeUp: percentLost(takesUp) };
        const { difference } = warpLengthByBothRules(input);
        if (shrinks + takesUp === 0) expect(difference.in(inches)).toBe(0);
        else expect(difference.in(inches)).toBeGreaterThan(0);
      }),
    );
  });
  it("is nothing but loom waste short where the pieces lose nothing", () => {
    const nothing = { loomToFinished: percentLost(0), takeUp: percentLost(0) };
    const both = warpLengthByBothRules({ ...napkins, pieces: 1, hemEachEnd: inches(0), ...nothing });
    expect([both.dividing.in(inches), both.adding.in(inches), both.difference.in(inches)]).toEqual([51, 51, 0]);
  });
  it("are refused together, as the dividing rule refuses", () => {
    expect(codesOf(warpLengthByBothRules, { ...napkins, pieces: 0, takeUp: percentAdded(8) })).toEqual([
      "out-of-range pieces",
      "wrong-kind takeUp",
    ]);
    expect(codesOf(warpLengthByBothRules, { ...napkins, loomToFinished: percentLost(100) })).toEqual([
      "out-of-range loomToFinished",
    ]);
    expect(codesOf(warpLengthByBothRules, { ...napkins, loomWaste: undefined })).toEqual(["missing loomWaste"]);
  });
});
