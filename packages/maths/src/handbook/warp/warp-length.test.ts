import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { cnch2016 } from "../../sources/index.js";
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
