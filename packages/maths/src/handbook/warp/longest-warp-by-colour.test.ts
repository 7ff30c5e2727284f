import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { yards } from "../../units/index.js";
import { longestWarpByColour } from "./longest-warp-by-colour.js";

describe("what the yarn at hand allows", () => {
  // 1680 ÷ 300 = 5.6, 520 ÷ 100 = 5.2; 1680 - 300 × 5.2 = 120.
  const ashAndCoal = [
    { colour: "ash", ends: 300, yarn: yards(1680) },
    { colour: "coal", ends: 100, yarn: yards(520) },
  ] as const;
  cited(
    "a warp of 300 ends of 1680 yards and 100 ends of 520",
    byHand(commonPractice, "26/5"),
    longestWarpByColour,
    [ashAndCoal],
    ["warp", yards],
  );
  cited(
    "1680 yards for 300 ends beside 520 for 100, left of the first",
    byHand(commonPractice, "120"),
    longestWarpByColour,
    [ashAndCoal],
    ["left.0.yarn", yards],
  );
  it("is the colour that runs out first: coal allows 5.2 yd, and 120 yd of ash stay", () => {
    const report = longestWarpByColour(ashAndCoal);
    expect(report.runsOutFirst).toBe("coal");
    expect(report.warp.in(yards)).toBe(5.2);
    expect(report.left.map(({ colour, yarn }) => [colour, yarn.in(yards)])).toEqual([
      ["ash", 120],
      ["coal", 0],
    ]);
    expect(report.steps.map((step) => step.calculation(step.input))).toHaveLength(2);
  });
  it("leaves no colour short, and the first none over, whatever the numbers", () => {
    const colour = fc.record({
      colour: fc.constantFrom("ash", "coal", "weld"),
      ends: fc.integer({ min: 1, max: 700 }),
      yarn: fc.integer({ min: 1, max: 9000 }).map((length) => yards(length)),
    });
    fc.assert(
      fc.property(fc.array(colour, { minLength: 1, maxLength: 6 }), (colours) => {
        const left = longestWarpByColour(colours).left.map(({ yarn }) => yarn.in(yards));
        expect(Math.min(...left)).toBe(0);
      }),
    );
  });
  it("is of one end and all the yarn where there is no more, and of the first of two that run out together", () => {
    const one = longestWarpByColour([{ colour: "ash", ends: 1, yarn: yards(9) }]);
    expect([one.warp.in(yards), one.left.map(({ yarn }) => yarn.in(yards))]).toEqual([9, [0]]);
    const both = longestWarpByColour([
      { colour: "ash", ends: 2, yarn: yards(9) },
      { colour: "coal", ends: 4, yarn: yards(18) },
    ]);
    expect([both.runsOutFirst, both.left.map(({ yarn }) => yarn.in(yards))]).toEqual(["ash", [0, 0]]);
  });
  it("is refused for no colours, a colour without a name, no ends and no yarn", () => {
    const [one] = ashAndCoal;
    expect(codesOf(longestWarpByColour, [])).toEqual(["empty colours"]);
    expect(codesOf(longestWarpByColour, { one })).toEqual(["wrong-kind colours"]);
    expect(codesOf(longestWarpByColour, [{ ...one, colour: 3 }])).toEqual(["wrong-kind colours.0.colour"]);
    expect(codesOf(longestWarpByColour, [{ ...one, ends: 0 }, one, { ...one, yarn: yards(0) }])).toEqual([
      "out-of-range colours.0.ends",
      "out-of-range colours.2.yarn",
    ]);
    expect(codesOf(longestWarpByColour, [{ ...one, more: 1 }])).toEqual(["unknown-field colours.0.more"]);
  });
});
