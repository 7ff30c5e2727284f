import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { contractedCount, warpLength } from "../handbook/index.js";
import { inches, percentLost, yards, yardsPerPound } from "../units/index.js";
import { asText } from "../engine/working/index.js";
import { check } from "./index.js";

describe("a claim that takes two slips", () => {
  // Each by hand: the cut length with 21 − 2 in is 8 × 19 = 152 in; 152 ÷ 0.9 × 1.08 + 30 = 212.4 in.
  it.each([
    ["212.40", "takes hem each end away instead of adding it", "adds the 8 % of take-up instead of dividing it out"],
    ["220.0", "adds the 10 % of loom to finished instead of dividing it out", "leaves out loom waste"], // 202.4 ÷ 0.92
  ])("of %s in is named with both", (written, first, second) => {
    const { pairs } = check(warpLength, napkins, { written, unit: inches }).pairs();
    const both = pairs.map(({ slips }) => [...slips].sort((a, b) => (a < b ? -1 : 1)).join(" | "));
    expect(both).toContain([first, second].sort((a, b) => (a < b ? -1 : 1)).join(" | "));
    expect(check(warpLength, napkins, { written, unit: inches }).slips).toEqual([]);
  });

  it("tells how many pairs fit, and that many fit by chance", () => {
    const found = check(warpLength, napkins, { written: "220.0", unit: inches }).pairs();
    expect(found.fitting).toBeGreaterThan(1);
    expect(asText(found)).toMatch(/pairs of known slips (?:would )?give this/u);
    expect(found.says).toHaveLength(found.pairs.length + 1);
  });

  it("to few digits fits more pairs than are listed", () => {
    const { pairs, fitting } = check(warpLength, napkins, { written: "5.2", unit: yards }).pairs();
    expect(pairs).toHaveLength(12);
    expect(fitting).toBeGreaterThan(12);
  });

  it("is not looked for where the answer is right, nor where one slip gives it", () => {
    expect(check(warpLength, napkins, { written: "252.22", unit: inches }).pairs()).toMatchObject({
      pairs: [],
      fitting: 0,
    });
    const { pairs } = check(warpLength, napkins, { written: "250.00", unit: inches }).pairs();
    const single = "adds the 10 % of loom to finished instead of dividing it out";
    expect(pairs.filter(({ slips }) => slips.includes(single))).toEqual([]);
  });
});

describe("a printed mistake that no single slip gives", () => {
  // 4,200 ÷ 2 was printed as 2,400, and 5 % taken off that: 2,280 yd/lb; 4,200 with two digits changed over, never halved.
  it("of 2,280 yards in the pound is 2,400 for 4,200 and not divided by the plies", () => {
    const yarn = { count: yardsPerPound(4200), plies: 2, contraction: percentLost(5) };
    const claim = { written: "2280", unit: yardsPerPound };
    expect(check(contractedCount, yarn, claim).slips).toEqual([]);
    const { pairs, fitting } = check(contractedCount, yarn, claim).pairs();
    expect(fitting).toBeLessThanOrEqual(3);
    expect(pairs[0]?.slips).toContain("takes 2400 for the 4200 of count, two figures changed over");
  });
});
