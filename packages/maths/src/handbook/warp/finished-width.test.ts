import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { cnch2016 } from "#ci/sources.js";
import { inches, percentLost } from "../../units/index.js";
import { finishedWidth } from "./finished-width.js";

describe("finished width", () => {
  cited(
    "twelve inches that lose a fifth finish at 9.6",
    published(cnch2016, "opening section", "9.6", "9.6"),
    finishedWidth,
    [{ widthInReed: inches(12), reedToFinished: percentLost(20) }],
    inches,
  );

  it("is the width in the reed where nothing is lost", () => {
    expect(finishedWidth({ widthInReed: inches(20), reedToFinished: percentLost(0) }).in(inches)).toBe(20);
  });

  it("makes up the width in the reed with what is lost", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 99 }), (wide, lost) => {
        const left = finishedWidth({ widthInReed: inches(wide), reedToFinished: percentLost(lost) }).in(inches);
        expect(Math.abs(left + (wide * lost) / 100 - wide)).toBeLessThanOrEqual(1e-12 * wide);
      }),
    );
  });
});

describe("the limits of finished width", () => {
  limits(
    finishedWidth,
    [
      "is the width in the reed where nothing is lost",
      { widthInReed: inches(20), reedToFinished: percentLost(0) },
      20,
      inches,
    ],
    { widthInReed: inches(0), reedToFinished: percentLost(100) },
  );
});
