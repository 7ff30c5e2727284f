import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, endsPerInch, percentOf } from "../../units/index.js";
import { coverByPeirce } from "./cover-by-peirce.js";
import { totalCover } from "./total-cover.js";

describe("the cover of a cloth", () => {
  cited(
    "warp of 58 % and weft of 46 %",
    published(
      gateTextile,
      "2003, Q75",
      "80.6",
      "77.30257060065454955315908370104444766567",
      "misprint: it carries on with 35 picks where 30 are given",
    ),
    totalCover,
    [
      {
        warpCover: percentOf("57.96730400263008034086263534641822584333"),
        weftCover: percentOf("46.00053872165211657588065467520359378462"),
      },
    ],
    percentOf,
  );
  cited(
    "warp and weft of 42 % each",
    published(gateTextile, "2007, Q85, working", "66.4", "66.36"),
    totalCover,
    [{ warpCover: percentOf(42), weftCover: percentOf(42) }],
    percentOf,
  );
  cited(
    "warp and weft of 62.5 % each",
    published(gateTextile, "2011, Q45", "0.86 of the cloth", "85.9375"),
    totalCover,
    [{ warpCover: percentOf("62.5"), weftCover: percentOf("62.5") }],
    percentOf,
  );
  it("of warp and weft is at least that of either, and never more than all", () => {
    const shares = fc.integer({ min: 1, max: 100 });
    fc.assert(
      fc.property(shares, shares, (warp, weft) => {
        const both = totalCover({ warpCover: percentOf(warp), weftCover: percentOf(weft) }).in(percentOf);
        expect(both).toBeGreaterThanOrEqual(Math.max(warp, weft));
        expect(both).toBeLessThanOrEqual(100);
      }),
    );
  });
  it("is refused for a warp that hides more than all of it", () => {
    expect(() => totalCover({ warpCover: percentOf(101), weftCover: percentOf(40) })).toThrow("warpCover");
    expect(() => coverByPeirce({ threads: endsPerInch(0), count: cottonCount(30) })).toThrow("threads");
  });
});
