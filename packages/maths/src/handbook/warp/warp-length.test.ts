import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { allFiberArts, cnch2016, goodOnes, jablonski, osterkamp, starweaving } from "../../sources/index.js";
import { inches, percentLost, yards } from "../../units/index.js";
import { warpLength } from "./warp-length.js";

const napkins = {
  pieces: 8,
  finishedLength: inches(21),
  hemEachEnd: inches(1),
  loomToFinished: percentLost(10),
  takeUp: percentLost(8),
  loomWaste: inches(30),
};

describe("length of warp", () => {
  cited(
    "ten inches wanted of a cloth that loses a fifth",
    {
      source: cnch2016,
      at: "opening section",
      status: "read",
      prints: "12.5",
      exact: "12.5",
    },
    warpLength,
    [
      {
        pieces: 1,
        finishedLength: inches(10),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(20),
        takeUp: percentLost(0),
        loomWaste: inches(0),
      },
    ],
    inches,
  );

  cited(
    "two pieces of 46 in and a yard of waste",
    { source: allFiberArts, at: "whole page", status: "read", prints: "128", exact: "128" },
    warpLength,
    [
      {
        pieces: 2,
        finishedLength: inches(46),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(0),
        takeUp: percentLost(0),
        loomWaste: inches(36),
      },
    ],
    inches,
  );
  cited(
    "the same in yards",
    {
      source: allFiberArts,
      at: "whole page",
      status: "read",
      prints: "3.5",
      exact: "32/9",
      differs: "rounded down, 2 in short",
    },
    warpLength,
    [
      {
        pieces: 2,
        finishedLength: inches(46),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(0),
        takeUp: percentLost(0),
        loomWaste: inches(36),
      },
    ],
    yards,
  );
  cited(
    "ten inches wanted of a cloth that loses 15 %",
    { source: jablonski, at: "whole example", status: "read", prints: "11.76", exact: "200/17" },
    warpLength,
    [
      {
        pieces: 1,
        finishedLength: inches(10),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(15),
        takeUp: percentLost(0),
        loomWaste: inches(0),
      },
    ],
    inches,
  );
  cited(
    "fifteen inches wanted of a cloth that loses 15 %",
    {
      source: jablonski,
      at: "whole example",
      status: "read",
      prints: "17.64",
      exact: "300/17",
      differs: "worked with the ratio rounded to 1.176",
    },
    warpLength,
    [
      {
        pieces: 1,
        finishedLength: inches(15),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(15),
        takeUp: percentLost(0),
        loomWaste: inches(0),
      },
    ],
    inches,
  );
  cited(
    "three inches wanted of a cloth that loses 5 %",
    {
      source: osterkamp,
      at: "whole text",
      status: "read",
      prints: "3.15",
      exact: "60/19",
      differs: "adds the 5 % instead of dividing it out",
    },
    warpLength,
    [
      {
        pieces: 1,
        finishedLength: inches(3),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(5),
        takeUp: percentLost(0),
        loomWaste: inches(0),
      },
    ],
    inches,
  );
  cited(
    "five inches wanted of a cloth that loses 5 %",
    {
      source: osterkamp,
      at: "whole text",
      status: "read",
      prints: "5.25",
      exact: "100/19",
      differs: "adds the 5 % instead of dividing it out",
    },
    warpLength,
    [
      {
        pieces: 1,
        finishedLength: inches(5),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(5),
        takeUp: percentLost(0),
        loomWaste: inches(0),
      },
    ],
    inches,
  );
  cited(
    "17 1/2 in wanted with 10 % and 10 %",
    {
      source: goodOnes,
      at: "June 2019, planning figures",
      status: "read",
      prints: "21",
      exact: "1750/81",
      differs: "adds both percentages together and adds them on",
    },
    warpLength,
    [
      {
        pieces: 1,
        finishedLength: inches("17.5"),
        hemEachEnd: inches(0),
        loomToFinished: percentLost(10),
        takeUp: percentLost(10),
        loomWaste: inches(0),
      },
    ],
    inches,
  );
  cited(
    "fringe of 5 in at each end of a cloth of 55 in",
    { source: starweaving, at: "steps 1-2", status: "read", prints: "65", exact: "65" },
    warpLength,
    [
      {
        pieces: 1,
        finishedLength: inches(55),
        hemEachEnd: inches(5),
        loomToFinished: percentLost(0),
        takeUp: percentLost(0),
        loomWaste: inches(0),
      },
    ],
    inches,
  );

  it("of eight napkins is 252 2/9 in: 8 × 23 = 184, ÷ 0.9 ÷ 0.92 = 222 2/9, + 30", () => {
    expect(warpLength(napkins).in(inches)).toBeCloseTo(2270 / 9, 12);
  });

  it("grows with every piece and with every loss", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 98 }), (pieces, lost) => {
        const input = { ...napkins, pieces, takeUp: percentLost(lost) };
        const length = warpLength(input).in(yards);
        expect(warpLength({ ...input, pieces: pieces + 1 }).in(yards)).toBeGreaterThan(length);
        expect(warpLength({ ...input, takeUp: percentLost(lost + 1) }).in(yards)).toBeGreaterThan(length);
      }),
    );
  });

  it("refuses a loss of all there is", () => {
    expect(() => warpLength({ ...napkins, takeUp: percentLost(100) })).toThrow(QuantityError);
  });
});
