import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  allFiberArts,
  cnch2016,
  handwovenWarpLength,
  horsensVaevekreds,
  jablonskiTakeUp,
  schoolOfWeaving,
  woodhouseKilgour1921,
} from "#ci/sources.js";
import { napkins } from "#ci/napkins.js";
import type { Unit } from "../../engine/quantity/index.js";
import { centimetres, inches, percentLost, yards } from "../../units/index.js";
import { warpLength } from "./warp-length.js";
import type { WarpLengthInput } from "./warp-length.js";

type Row = readonly [title: string, Citation, input: WarpLengthInput, Unit<"length">];

const rows: readonly Row[] = [
  [
    "5 cuts of 120 yards",
    published(woodhouseKilgour1921, "ch. XIII", "600", "600"),
    {
      pieces: 5,
      finishedLength: yards(120),
      hemEachEnd: yards(0),
      loomToFinished: percentLost(0),
      takeUp: percentLost(0),
      loomWaste: yards(0),
    },
    yards,
  ],
  [
    "four towels woven 34 inches, 31 inches of waste and 13 of take-up left on the warp",
    published(handwovenWarpLength, "a reader's question", "5", "5"),
    {
      pieces: 4,
      finishedLength: inches(34),
      hemEachEnd: inches(0),
      loomToFinished: percentLost(0),
      takeUp: percentLost(0),
      loomWaste: inches(44),
    },
    yards,
  ],
  [
    "a towel of 28 inches that loses 12 % and takes up 9 %",
    published(
      schoolOfWeaving,
      "the question",
      "33.75",
      "5000/143",
      "adds both percentages to the finished length, where they are to be divided out one after the other",
    ),
    {
      pieces: 1,
      finishedLength: inches(28),
      hemEachEnd: inches(0),
      loomToFinished: percentLost(12),
      takeUp: percentLost(9),
      loomWaste: inches(0),
    },
    inches,
  ],
  [
    "three towels of 70 cm with 2 cm turned under at each end, a tenth lost, 75 cm of waste",
    published(
      horsensVaevekreds,
      "whole page",
      "319.2",
      "965/3",
      "adds a tenth to 74 cm, where it is to be divided out",
    ),
    {
      pieces: 3,
      finishedLength: centimetres(70),
      hemEachEnd: centimetres(2),
      loomToFinished: percentLost(10),
      takeUp: percentLost(0),
      loomWaste: centimetres(75),
    },
    centimetres,
  ],
];

describe("length of warp", () => {
  cited(
    "ten inches wanted of a cloth that loses a fifth",
    {
      source: cnch2016,
      at: "opening section",
      status: "read",
      prints: "",
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
    "two of 46 inches and a yard of waste, in yards",
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
    { source: jablonskiTakeUp, at: "whole example", status: "read", prints: "11.76", exact: "200/17" },
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
      source: jablonskiTakeUp,
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

  for (const [title, citation, input, unit] of rows) cited(title, citation, warpLength, [input], unit);

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
    expect(() => warpLength({ ...napkins, takeUp: percentLost(100) })).toThrow("takeUp");
  });
});
