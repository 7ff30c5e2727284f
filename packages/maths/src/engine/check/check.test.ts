import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endsForWidth, foldedCount, settByDiameter, warpLength } from "../../handbook/index.js";
import { centimetres, cottonCount, endsPerInch, grams, inches, percentLost, yards } from "../../units/index.js";
import { QuantityError } from "../refusal.js";
import { check } from "./index.js";

const napkins = {
  pieces: 8,
  finishedLength: inches(21),
  hemEachEnd: inches(1),
  loomToFinished: percentLost(10),
  takeUp: percentLost(8),
  loomWaste: inches(30),
};

function slipsFor(written: string): readonly string[] {
  return check(warpLength, napkins, { written, unit: yards }).slips.map(({ says }) => says);
}

describe("a claim about the length of a warp", () => {
  it.each(["7", "7.0", "7.01", "7.006", "7.0062", "7.00617284"])("of %s yd is right", (written) => {
    expect(check(warpLength, napkins, { written, unit: yards })).toMatchObject({ right: true, slips: [] });
  });

  // 184 in cut; ÷ 0.9 = 204.444; ÷ 0.92 = 222.222; + 30 = 252.222 in. Each number below is that sum with one slip, ÷ 36.
  it.each([
    ["6.94", "adds the 10 % of loom to finished instead of dividing it out"], // 184 × 1.1 ÷ 0.92 + 30 = 250
    ["6.97", "adds the 8 % of take-up instead of dividing it out"], // 204.444 × 1.08 + 30 = 250.8
    ["6.39", "leaves the 10 % of loom to finished out"], // 184 ÷ 0.92 + 30 = 230
    ["6.91", "adds each of loom to finished and take-up instead of dividing it out"], // 184 × 1.1 × 1.08 + 30 = 248.592
    ["6.17", "leaves out loom waste"], // 222.222
    ["12.84", "counts the loom waste once for every piece"], // 222.222 + 240 = 462.222
    ["6.74", "leaves out the factor 2"], // 8 × 22 ÷ 0.828 + 30 = 242.560
    ["7.07", "adds the percentages of loom to finished and take-up together and divides once"], // 184 ÷ 0.82 + 30 = 254.390
    ["252.22", "reckons in in and calls them yd"],
  ])("of %s yd comes of a sum that %s", (written, says) => {
    expect(slipsFor(written)).toContain(`a sum that ${says} gives this`);
  });

  it("of a number that no known slip gives is wrong without a name", () => {
    expect(check(warpLength, napkins, { written: "9.87", unit: yards })).toMatchObject({ right: false, slips: [] });
  });

  it("is judged in the unit it was written in", () => {
    expect(check(warpLength, napkins, { written: "640.64", unit: centimetres }).right).toBe(true);
    expect(() => check(warpLength, napkins, { written: "7", unit: grams as never })).toThrow(QuantityError);
    expect(() => check(warpLength, napkins, { written: "7", unit: null })).toThrow(QuantityError);
  });

  it.each(["", "seven", "7,01", "1e3", "NaN", "7.", " 7", "7 yd", "9".repeat(100)])(
    "written %j is refused",
    (written) => {
      expect(() => check(warpLength, napkins, { written, unit: yards })).toThrow("as it was written");
    },
  );

  it("that is right is never accused, at any number of digits", () => {
    const inputs = fc.record({
      pieces: fc.integer({ min: 1, max: 30 }),
      length: fc.integer({ min: 40, max: 900 }),
      hem: fc.nat({ max: 30 }),
      lost: fc.nat({ max: 30 }),
      takeUp: fc.nat({ max: 20 }),
      waste: fc.nat({ max: 60 }),
      digits: fc.nat({ max: 6 }),
    });
    fc.assert(
      fc.property(inputs, ({ pieces, length, hem, lost, takeUp, waste, digits }) => {
        const input = {
          pieces,
          finishedLength: inches(length / 16),
          hemEachEnd: inches(hem / 16),
          loomToFinished: percentLost(lost),
          takeUp: percentLost(takeUp),
          loomWaste: inches(waste),
        };
        const { exact, rounded } = check(warpLength, input, { written: (0).toFixed(digits), unit: yards });
        expect(check(warpLength, input, { written: rounded, unit: yards })).toMatchObject({ right: true, slips: [] });
        expect(Math.abs(Number(rounded) - Number(exact))).toBeLessThanOrEqual(0.5 * 10 ** -digits * 1.0001);
      }),
    );
  });
});

describe("a claim", () => {
  it("about a fold that is the average of the counts is named so", () => {
    const counts = [cottonCount(60), cottonCount(40)];
    const { slips } = check(foldedCount, { counts }, { written: "50", unit: cottonCount });
    expect(slips[0]?.says).toBe("a sum that takes the average of the counts gives this");
  });

  it("about ends that were rounded down is named so", () => {
    const input = { sett: endsPerInch(30), widthInReed: inches("26.25"), threadingRepeat: 8, balanceEnds: 1 };
    const { slips } = check(endsForWidth, input, { written: "785", unit: null });
    expect(slips.map(({ says }) => says)).toContain("a sum that rounds down instead of up gives this");
    expect(() => check(endsForWidth, input, { written: "785", unit: yards })).toThrow("plain number");
  });

  it("about a sett with the square root forgotten is named so", () => {
    const input = { constant: 0.9, yardsPerPound: 3360, ends: 2, intersections: 2 };
    const { slips } = check(settByDiameter, input, { written: "1512", unit: null });
    expect(slips.map(({ says }) => says)).toContain("a sum that forgets the square root of yards per pound gives this");
  });
});
