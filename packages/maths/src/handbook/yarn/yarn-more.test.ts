import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches } from "../../units/index.js";
import { yarnInAll } from "./yarn-in-all.js";
import { yarnMore } from "./yarn-more.js";

describe("yarn for one piece more", () => {
  cited(
    "36 ends of 21 inches and 244 of weft",
    byHand(commonPractice, "1000"),
    yarnMore,
    [{ ends: 36, warpMore: inches(21), wefts: [inches(244)] }],
    inches,
  );
  cited(
    "36 ends and no weft",
    byHand(commonPractice, "756"),
    yarnMore,
    [{ ends: 36, warpMore: inches(21), wefts: [] }],
    inches,
  );

  it("is what the yarn in all grows by from one piece to the next", () => {
    fc.assert(
      fc.property(fc.nat(400), fc.integer({ min: 1, max: 90 }), fc.nat(900), fc.nat(9), (ends, more, weft, pieces) => {
        const yarn = (n: number): number =>
          yarnInAll({ warp: inches(ends * (n * more + 20)), wefts: [inches(n * weft)] }).in(inches);
        const grown = yarnMore({ ends, warpMore: inches(more), wefts: [inches(weft)] }).in(inches);
        expect(yarn(pieces + 1) - yarn(pieces)).toBe(grown);
      }),
    );
  });
  it("is refused where a piece more makes the warp shorter", () => {
    expect(() => yarnMore({ ends: 36, warpMore: inches(-1), wefts: [] })).toThrow("0 or more");
  });
});
