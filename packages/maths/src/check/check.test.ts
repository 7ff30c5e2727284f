import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import {
  contractedCount,
  endsForWidth,
  foldedCount,
  settByDiameter,
  warpLength,
  warpLengthByAdding,
} from "../handbook/index.js";
import {
  centimetres,
  cottonCount,
  endsPerInch,
  grams,
  inches,
  percentAdded,
  percentLost,
  yards,
  yardsPerPound,
} from "../units/index.js";
import { check } from "./index.js";

function slipsFor(written: string): readonly string[] {
  return check(warpLength, napkins, { written, unit: yards }).slips.map(({ says }) => says);
}

describe("a claim about the length of a warp", () => {
  it.each(["7", "7.0", "7.01", "7.006", "7.0062", "7.00617284"])("of %s yd is right", (written) => {
    expect(check(warpLength, napkins, { written, unit: yards })).toMatchObject({ right: true, slips: [] });
  });

  // 184 in cut; ÷ 0.9 = 204.444; ÷ 0.92 = 222.222; + 30 = 252.222 in. Each number below is that sum with one slip.
  it.each([
    ["250.0", "adds the 10 % of loom to finished instead of dividing it out"], // 184 × 1.1 ÷ 0.92 + 30
    ["250.80", "adds the 8 % of take-up instead of dividing it out"], // 204.444 × 1.08 + 30
    ["230.0", "leaves the 10 % of loom to finished out"], // 184 ÷ 0.92 + 30
    ["248.59", "adds each of the 10 % of loom to finished and the 8 % of take-up"], // 184 × 1.1 × 1.08 + 30
    ["222.22", "leaves out loom waste"],
    ["462.22", "counts the loom waste once for every piece"], // 222.222 + 240
    ["242.56", "counts hem each end once, not twice,"], // 8 × 22 ÷ 0.828 + 30
    ["254.39", "adds the 10 % of loom to finished and the 8 % of take-up together and divides once"], // 184 ÷ 0.82 + 30
  ])("of %s in comes of a sum that %s", (written, says) => {
    const { slips } = check(warpLength, napkins, { written, unit: inches });
    expect(slips[0]?.says).toBe(`a sum that ${says} gives this`);
  });

  it("of 252.22 yd has its unit mistaken", () => {
    expect(slipsFor("252.22")).toEqual(["a sum that reckons in in and calls them yd gives this"]);
  });

  it("to three figures near the answer is given no name, but help", () => {
    const { slips, says, value } = check(warpLength, napkins, { written: "7.33", unit: yards });
    expect({ slips, value }).toEqual({ slips: [], value: "wrong" });
    expect(says.join(" ")).toMatch(/^7\.33 yd is not the answer: .* Write out the lines/u);
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

  it.each(["", "seven", "1e3", "NaN", "7 lb", "7 8", "1/0", "-", "9".repeat(100), "7".repeat(1_000_000)])(
    "written %.20j is refused, in words for a pupil",
    (written) => {
      const refused = (): unknown => check(warpLength, napkins, { written, unit: yards });
      expect(refused).toThrow(/^check\(\{ written \}\): expected a number as it was written/u);
    },
  );

  it.each(["7,01", "7.01 yd", " 7.01 ", "7.01 yards", "7 yd 0.2 in", "7 1/128", "252.2 in", "252 1/4 in"])(
    "written %j is read",
    (written) => {
      const near = check(warpLength, napkins, { written, unit: yards });
      expect(near.sound).toBe(true);
    },
  );

  it("may be a fraction, which claims half its step, and is told from one that does not fit", () => {
    const claim = (written: string): boolean => check(warpLength, napkins, { written, unit: inches }).right;
    expect(["252 1/4", "252¼", "252 2/8"].map(claim)).toEqual([true, true, true]);
    expect(["252 1/8", "252⅜"].map(claim)).toEqual([false, false]);
  });

  it("with a comma before three figures is read by its language", () => {
    const ask = { ...napkins, loomWaste: inches(30 + 1000) };
    // 222.222 + 1030 = 1252.222 in
    expect(check(warpLength, ask, { written: "1,252", unit: inches }).right).toBe(true);
    expect(check(warpLength, napkins, { written: "7,006", unit: yards, locale: "de" }).right).toBe(true);
    expect(check(warpLength, ask, { written: "1.252,2", unit: inches, locale: "de" }).right).toBe(true);
    for (const locale of ["de_DE", "nowhere", ""])
      expect(() => check(warpLength, ask, { written: "1.252,2", unit: inches, locale })).toThrow(
        "a locale that is known",
      );
  });

  it("with fewer decimals than asked is not finished, and one with a wrong method does not pass as right", () => {
    const asked = { unit: yards, decimals: 3 } as const;
    expect(check(warpLength, napkins, { written: "7", ...asked })).toMatchObject({
      right: false,
      value: "not finished",
    });
    expect(check(warpLength, napkins, { written: "7.0", ...asked }).says).toEqual([
      "7.0 yd is not finished: give 3 decimals.",
    ]);
    expect(check(warpLength, napkins, { written: "7.006", ...asked }).right).toBe(true);
  });

  it("is right but for the last figure where a line was rounded early, and accuses nobody", () => {
    // 204.4 ÷ 0.92 = 222.17, written 222.3 by one whose 1 ÷ 0.92 is 1.087: 252.3 where 252.2 is exact.
    const { value, right, sound, slips } = check(warpLength, napkins, { written: "252.3", unit: inches });
    expect({ value, right, sound, slips }).toEqual({
      value: "right but for the last figure",
      right: false,
      sound: true,
      slips: [],
    });
  });

  it("rounded up to what one winds is right for use", () => {
    expect(check(warpLength, napkins, { written: "252.5", unit: inches }).value).toBe("right, rounded for use");
    expect(check(warpLength, napkins, { written: "253", unit: inches }).says[0]).toBe(
      "253 in is right, rounded for use; more exactly 252.222 in.",
    );
  });

  it.each([
    ["2522.2", "the figures are right, the point is one place too far to the right"],
    ["70.06", "the figures 25"],
    ["225.22", "the figures 52 are changed over"],
    ["292.22", "only the second figure differs"],
  ])("of %s has the fact told first", (written, fact) => {
    const { facts } = check(warpLength, napkins, { written, unit: inches });
    if (fact !== "the figures 25")
      expect(facts[0]?.says).toMatch(new RegExp(`^${fact.replace("52", "(?:52|22)")}`, "u"));
    else expect(facts.at(-1)?.key).toBe("size");
  });

  it("carries the wrong sum itself, to be worked out for other numbers", () => {
    const [slip] = check(warpLength, napkins, { written: "230.0", unit: inches }).slips;
    // 6 × 23 ÷ 0.92 + 30 = 180 in
    expect(slip?.at({ ...napkins, pieces: 6 })).toBeCloseTo(180, 9);
    expect(slip?.certainty).toBe("certain");
    expect(slip?.at({ pieces: "six" })).toBeNull();
  });

  it("is told in three sentences at most", () => {
    for (const written of ["250.0", "6.9", "1", "99999", "222.22", "0.004"])
      expect(check(warpLength, napkins, { written, unit: inches }).says.length).toBeLessThanOrEqual(3);
  });

  it("is never accused where it is right, at any number of digits", () => {
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

  it("about a count takes no unit", () => {
    const input = { sett: endsPerInch(30), widthInReed: inches("26.25"), threadingRepeat: 8, balanceEnds: 1 };
    const { slips } = check(endsForWidth, input, { written: "785", unit: null });
    expect(slips.length).toBeLessThanOrEqual(3);
    expect(check(endsForWidth, input, { written: "793", unit: yards })).toMatchObject({
      right: false,
      unit: "not wanted",
    });
  });

  it("about a sett with the square root forgotten is named so", () => {
    const input = { constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 };
    const { slips } = check(settByDiameter, input, { written: "1512", unit: endsPerInch });
    expect(slips.map(({ says }) => says)).toContain("a sum that forgets the square root of count gives this");
  });
});

describe("a claim judged further", () => {
  // 204.444 in on the loom and 222.222 in of thread: 252.222 in. 250 in is 23 − 0.2467 in a piece.
  it("tells where a slip stands and what it costs each piece", () => {
    const { slips, cost, value } = check(warpLength, napkins, { written: "250.00", unit: inches });
    expect(slips[0]?.line).toBe("on loom");
    expect(value).toBe("wrong");
    expect(cost).toBe("finished length about 1/4 in short");
  });

  it("is cut off where its last digit was not rounded", () => {
    expect(check(warpLength, napkins, { written: "252.2222", unit: inches }).value).toBe("right");
    const reed = { constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 };
    // 0.9 × √3360 ÷ 2 = 26.08448, which is 26.0845 rounded and 26.0844 cut off.
    expect(check(settByDiameter, reed, { written: "26.0844", unit: endsPerInch })).toMatchObject({
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

  it("is a tie where two sums give it, told with both", () => {
    // Two plies: half the count is what is left out, and what halving gives.
    const yarn = { count: cottonCount(20), plies: 2, contraction: percentLost(4) };
    const { slips, says, tellApart } = check(contractedCount, yarn, { written: "19.20", unit: cottonCount });
    expect(slips.length).toBeGreaterThan(1);
    expect(tellApart).toBe("for these numbers the two are one");
    expect(says[1]).toMatch(/^(?:Two|Three) sums give this: one that /u);
  });

  it("names, where it is right, the slips that cannot be seen at its digits", () => {
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
    const cut = { constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 };
    expect(check(settByDiameter, cut, { written: "26.0844", unit: endsPerInch }).digits).toBe("cut off");
    expect(
      check(foldedCount, { counts: [cottonCount(60), cottonCount(40)] }, { written: "24", unit: cottonCount }).digits,
    ).toBe("exact");
  });

  it("changed over in a number of the question are told", () => {
    // 8 × 14 ÷ 0.9 ÷ 0.92 + 30 = 165.266 in with 12 for 21.
    const { slips } = check(warpLength, napkins, { written: "165.266", unit: inches });
    expect(slips[0]?.says).toBe(
      "a sum that takes 12 for the 21 of finished length, two figures changed over, gives this",
    );
  });
});
