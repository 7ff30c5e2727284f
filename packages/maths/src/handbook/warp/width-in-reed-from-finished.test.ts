import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { tt820GoodOnes } from "#ci/sources.js";
import { inches, percentAdded, percentLost } from "../../units/index.js";
import { combinedLoss } from "./combined-loss.js";
import { finishedWidth } from "./finished-width.js";
import { widthInReedByAdding } from "./width-in-reed-by-adding.js";
import { widthInReedFromFinished } from "./width-in-reed-from-finished.js";

describe("finished width", () => {
  it("refuses a loss of all there is, and a bare number for a loss", () => {
    const widthInReed = inches(20);
    expect(() => finishedWidth({ widthInReed, reedToFinished: percentLost(100) })).toThrow("reedToFinished");
    expect(() => finishedWidth({ widthInReed, reedToFinished: 15 as never })).toThrow("reedToFinished");
  });
});

describe("width in the reed", () => {
  cited(
    "17 1/2 inches wanted of a cloth that takes up 10 % and shrinks 10 %",
    published(
      tt820GoodOnes,
      "June 2019, planning figures",
      "21",
      "1750/81",
      "adds both percentages together and adds them on",
    ),
    widthInReedFromFinished,
    [
      {
        finishedWidth: inches("17.5"),
        reedToFinished: combinedLoss({ first: percentLost(10), second: percentLost(10) }),
      },
    ],
    inches,
  );
  it("gives the finished width back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 90 }), (width, lost) => {
        const reedToFinished = percentLost(lost);
        const inReed = widthInReedFromFinished({ finishedWidth: inches(width), reedToFinished });
        expect(finishedWidth({ widthInReed: inReed, reedToFinished }).in(inches)).toBeCloseTo(width, 12);
      }),
    );
  });
  it("is refused for a cloth that loses all its width", () => {
    expect(() => widthInReedFromFinished({ finishedWidth: inches(17), reedToFinished: percentLost(100) })).toThrow(
      "reedToFinished",
    );
    expect(() =>
      widthInReedFromFinished({ finishedWidth: inches(17), reedToFinished: percentAdded(10) as never }),
    ).toThrow("expected a percentage lost");
  });
});

describe("width in the reed by adding", () => {
  it("is narrower than by dividing, by 1 % at 10 %", () => {
    const dividing = widthInReedFromFinished({ finishedWidth: inches(18), reedToFinished: percentLost(10) });
    const adding = widthInReedByAdding({ finishedWidth: inches(18), allowance: percentAdded(10) });
    expect([dividing.in(inches), adding.in(inches)]).toEqual([20, 19.8]);
  });
});
