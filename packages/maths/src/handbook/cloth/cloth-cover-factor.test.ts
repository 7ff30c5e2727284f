import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { textileSchoolWeaving } from "#ci/sources.js";
import { clothCoverFactor } from "./cloth-cover-factor.js";

describe("cover factors", () => {
  cited(
    "warp of 14 and weft of 12",
    published(
      textileSchoolWeaving,
      "items 1 to 7, the formula",
      "K1 + K2 − (K1 − K2)/28",
      "20",
      "misprint: a minus sign for the product; as printed 14 and 12 would come to 25.93",
    ),
    clothCoverFactor,
    [{ warpCover: 14, weftCover: 12 }],
    null,
  );
  it("are 28 in all where one set lies touching, whatever the other does", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 28 }), (weftCover) => {
        expect(clothCoverFactor({ warpCover: 28, weftCover })).toBeCloseTo(28, 9);
      }),
    );
  });
});

describe("the limits of cloth cover factor", () => {
  limits(
    clothCoverFactor,
    ["is that of the warp alone where the warp covers all", { warpCover: 28, weftCover: 14 }, 28],
    { warpCover: 0, weftCover: -1 },
  );
});
