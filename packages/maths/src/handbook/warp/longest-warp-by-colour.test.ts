import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { yards } from "../../units/index.js";
import { longestWarpByColour } from "./longest-warp-by-colour.js";

describe("what the yarn at hand allows", () => {
  it("is the colour that runs out first: coal allows 5.2 yd, and 120 yd of ash stay", () => {
    const report = longestWarpByColour([
      { colour: "ash", ends: 300, yarn: yards(1680) },
      { colour: "coal", ends: 100, yarn: yards(520) },
    ]);
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
  it("is refused for no colours, a colour without a name, no ends and no yarn", () => {
    const one = { colour: "ash", ends: 300, yarn: yards(1680) };
    expect(() => longestWarpByColour([])).toThrow(/list of colours/u);
    expect(() => longestWarpByColour([{ ...one, colour: 3 as never }])).toThrow(/colours\[0\].colour/u);
    expect(() => longestWarpByColour([{ ...one, ends: 0 }])).toThrow("{ colours[0].ends })");
    expect(() => longestWarpByColour([one, { ...one, yarn: yards(0) }])).toThrow(/colours\[1\]/u);
    expect(() => longestWarpByColour([{ ...one, more: 1 } as never])).toThrow(/more/u);
  });
});
