import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches } from "../../units/index.js";
import { weftOfStripes } from "./weft-of-stripes.js";

describe("weft of a yarn in stripes", () => {
  cited(
    "108 picks 45 inches wide in six stripes, 6 inches lost in each",
    byHand(commonPractice, "4896"),
    weftOfStripes,
    [{ picks: 108, widthInReed: inches(45), stripes: 6, eachStripe: inches(6) }],
    inches,
  );

  it("is picks times width where no tails are counted", () => {
    fc.assert(
      fc.property(fc.nat(900), fc.integer({ min: 1, max: 60 }), fc.nat(20), (picks, width, stripes) => {
        const given = { picks, widthInReed: inches(width), stripes, eachStripe: inches(0) };
        expect(weftOfStripes(given).in(inches)).toBe(picks * width);
      }),
    );
  });
  it("is nothing for a yarn with no stripe, and refused for half a pick", () => {
    const none = { picks: 0, widthInReed: inches(45), stripes: 0, eachStripe: inches(6) };
    expect(weftOfStripes(none).in(inches)).toBe(0);
    expect(() => weftOfStripes({ ...none, picks: 0.5 })).toThrow("a whole number of picks");
  });
});
