import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endsForWidth, foldedCount, settByDiameter, warpLength, warpLengthByAdding } from "../../handbook/index.js";
import {
  centimetres,
  cottonCount,
  endsPerInch,
  grams,
  inches,
  percentAdded,
  percentLost,
  yards,
} from "../../units/index.js";
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
    // The types refuse these; what a page reads from a form comes without them.
    const unit = grams as never;
    const inGrams = check(warpLength, napkins, { written: "252.22", unit });
    expect(inGrams).toMatchObject({ right: false, value: "right", unit: "of another kind", digits: "rounded" });
    expect(inGrams.notes).toEqual([
      "The answer is a length; that unit counts something else. The number is judged in inches.",
    ]);
    expect(check(warpLength, napkins, { written: "252.22", unit: null })).toMatchObject({
      right: false,
      value: "right",
      unit: "missing",
    });
    expect(check(warpLength, { ...napkins, loomWaste: inches(0) }, { written: "0", unit }).right).toBe(false);
    expect(() => check(warpLength, napkins, { written: "7", unit: "yd" as never })).toThrow("expected a unit");
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
    expect(check(endsForWidth, input, { written: "793", unit: yards })).toMatchObject({
      right: false,
      unit: "not wanted",
    });
  });

  it("about a sett with the square root forgotten is named so", () => {
    const input = { constant: 0.9, yardsPerPound: 3360, ends: 2, intersections: 2 };
    const { slips } = check(settByDiameter, input, { written: "1512", unit: null });
    expect(slips.map(({ says }) => says)).toContain("a sum that forgets the square root of yards per pound gives this");
  });
});

describe("a claim judged further", () => {
  // 204.444 in on the loom and 222.222 in of thread: 252.222 in, 7.006 yd. 250 in is 23 − 0.2467 in a piece.
  it("tells where a slip stands and what it costs each piece", () => {
    const { slips, cost, value } = check(warpLength, napkins, { written: "6.94", unit: yards });
    expect(slips[0]?.line).toBe("on loom");
    expect(value).toBe("wrong");
    expect(cost).toBe("finished length about 1/4 in short");
  });

  it("is cut off where its last digit was not rounded", () => {
    expect(check(warpLength, napkins, { written: "252.2222", unit: inches }).value).toBe("right");
    const reed = { constant: 0.9, yardsPerPound: 3360, ends: 2, intersections: 2 };
    // 0.9 × √3360 ÷ 2 = 26.08448, which is 26.0845 rounded and 26.0844 cut off.
    expect(check(settByDiameter, reed, { written: "26.0844", unit: null })).toMatchObject({
      right: false,
      value: "cut off, not rounded",
      slips: [],
    });
  });

  it("is right within a tolerance that is named, in the unit of the claim", () => {
    const verdict = check(warpLength, napkins, { written: "7.1", unit: yards, within: "0.1" });
    expect(verdict).toMatchObject({ right: true, value: "within the tolerance", slips: [] });
    expect(() => check(warpLength, napkins, { written: "7.1", unit: yards, within: -1 })).toThrow("zero or more");
  });

  it("in another unit of the kind is as good, and said to be", () => {
    expect(check(warpLength, napkins, { written: "7.01", unit: yards }).unit).toBe("another of its kind");
    expect(check(warpLength, napkins, { written: "252.2", unit: inches }).unit).toBe("as asked");
  });

  it("that two slips give is a tie, with the further digit that tells them apart", () => {
    // 250 in and 248.592 in are 6.94 and 6.91 yd: 6.9 both.
    const { slips, tellApart } = check(warpLength, napkins, { written: "6.9", unit: yards });
    expect(slips.length).toBeGreaterThan(1);
    expect(tellApart).toMatch(/^to 2 decimals they would differ/u);
  });

  it("that is right names the slips that cannot be seen at its digits", () => {
    const small = { ...napkins, loomToFinished: percentLost(2) };
    // 8 × 23 ÷ 0.98 and × 1.02 differ by 0.077 in: 6.5 yd either way.
    const { right, unseen } = check(warpLength, small, { written: "6.5", unit: yards });
    expect(right).toBe(true);
    expect(unseen.map(({ says }) => says)).toContain(
      "a sum that adds the 2 % of loom to finished instead of dividing it out gives this",
    );
  });
});

describe("a claim by the other convention about percentages", () => {
  // 184 × 1.1 × 1.08 + 30 = 248.592 in; 184 × 1.18 + 30 = 247.12 in; the dividing rule gives 252.222 in.
  it.each([
    ["248.59", "3.63"],
    ["247.12", "5.10"],
  ])("is no slip where the question states no base: %s in", (written, short) => {
    const verdict = check(warpLength, napkins, { written, unit: inches, base: "not stated" });
    expect(verdict).toMatchObject({ right: true, value: "right by the adding rule", slips: [], cost: null });
    expect(verdict.notes.join(" ")).toContain(`By the dividing rule it is short by ${Number(short).toString()} in.`);
    expect(verdict.notes.join(" ")).toContain("On which length");
    expect(check(warpLength, napkins, { written, unit: inches }).value).toBe("wrong");
  });

  it("is told the other way round for a formula that adds", () => {
    // 3 × 74 ÷ 0.9 + 75 = 321.667 cm where the formula adds 10 %: 319.2 cm.
    const input = {
      pieces: 3,
      finishedLength: centimetres(70),
      hemEachEnd: centimetres(2),
      shrinkage: percentAdded(10),
      takeUp: percentAdded(0),
      loomWaste: centimetres(75),
    };
    const verdict = check(warpLengthByAdding, input, { written: "321.67", unit: centimetres, base: "not stated" });
    expect(verdict.value).toBe("right by the dividing rule");
  });

  it("is still a slip where another is made with it", () => {
    const verdict = check(warpLength, napkins, { written: "6.39", unit: yards, base: "not stated" });
    expect(verdict).toMatchObject({ right: false, value: "wrong" });
  });
});

describe("the digits of a claim", () => {
  it.each([
    ["252.22", "rounded"],
    ["252.2", "rounded"],
    ["252.3", "not of the answer"],
  ])("%s in are %s", (written, digits) => {
    expect(check(warpLength, napkins, { written, unit: inches }).digits).toBe(digits);
  });

  it("are told from those cut off and from the whole of the answer", () => {
    const cut = { constant: 0.9, yardsPerPound: 3360, ends: 2, intersections: 2 };
    expect(check(settByDiameter, cut, { written: "26.0844", unit: null }).digits).toBe("cut off");
    expect(
      check(foldedCount, { counts: [cottonCount(60), cottonCount(40)] }, { written: "24", unit: cottonCount }).digits,
    ).toBe("exact");
  });

  it("changed over in a number of the question are told", () => {
    // 8 × 14 ÷ 0.9 ÷ 0.92 + 30 = 165.266 in with 12 for 21.
    const { slips } = check(warpLength, napkins, { written: "165.27", unit: inches });
    expect(slips.map(({ says }) => says)).toEqual([
      "a sum that takes 12 for the 21 of finished length, two digits changed over, gives this",
    ]);
  });
});
