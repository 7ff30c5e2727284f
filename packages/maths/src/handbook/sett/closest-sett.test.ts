import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  gateTextile,
  hslu,
  jammedCloth2025,
  osterkampAshenhurst,
  osterkampSettRevisited,
  settPage,
  taylor1909,
} from "../../sources/index.js";
import { endsPerCentimetre, endsPerInch, percentOf } from "../../units/index.js";
import { diametersFromWraps } from "./diameters-from-wraps.js";
import { floatFactor } from "./float-factor.js";
import { purposeShare } from "./purpose-share.js";
import { settByBrierley } from "./sett-by-brierley.js";
import { settByCurvature } from "./sett-by-curvature.js";
import { settByIntersections } from "./sett-by-intersections.js";
import { settForPurpose } from "./sett-for-purpose.js";
import { settFromPlain } from "./sett-from-plain.js";

const cottonOneInTex = 32399455 / 54864;

describe("the closest sett", () => {
  cited(
    "52 diameters in plain weave",
    published(settPage, "whole page", "26", "26"),
    settByIntersections,
    [{ diameters: 52, ends: 2, intersections: 2 }],
    null,
  );
  cited(
    "52 diameters in 2/2 twill",
    published(settPage, "whole page", "34", "104/3", "cut off, not rounded"),
    settByIntersections,
    [{ diameters: 52, ends: 4, intersections: 2 }],
    null,
  );
  cited(
    "24s cotton in 2/1 twill",
    published(taylor1909, "p. 338, ch. XII", "81", "81"),
    settByIntersections,
    [{ diameters: 135, ends: 3, intersections: 2 }],
    null,
  );
  cited(
    "diameters for one wrap counted by hand",
    published(osterkampAshenhurst, "whole article", "1.43", "10/7"),
    diametersFromWraps,
    [{ wraps: 1, ratio: 0.7 }],
    null,
  );
  cited(
    "10 wraps to the inch, in plain weave at the closest",
    published(osterkampAshenhurst, "whole article", "7", "50/7"),
    settByIntersections,
    [{ diameters: 10 / 0.7, ends: 2, intersections: 2 }],
    null,
  );
  cited(
    "10s cotton in plain weave, jammed",
    published(jammedCloth2025, "whole question", "51", "51.01684620070283459169120513182115362853"),
    settByCurvature,
    [{ diameters: 88.36376966154455, ends: 2, intersections: 2 }],
    null,
  );
  cited(
    "float factor of a 2/2 twill",
    {
      source: gateTextile,
      at: "2006, Q66, working",
      status: "read",
      prints: "",
      exact: "1.310393403858363267777739304055351282207",
    },
    floatFactor,
    [{ averageFloat: 2, exponent: 0.39 }],
    null,
  );
  cited(
    "60 tex cotton in 2/2 twill",
    published(
      gateTextile,
      "2006, Q66, working",
      "58.11",
      "58.13881685815366812545599485623412147247",
      "the root is rounded on the way; K stands under it with the count",
    ),
    settByBrierley,
    [{ floatFactor: 1.3103934038583633, constant: 200, count: cottonOneInTex / 60 }],
    null,
  );
  cited(
    "60 tex cotton in 2/2 twill, as the key has it",
    published(
      gateTextile,
      "2006, Q66, key",
      "230 to the decimetre",
      "58.13881685815366812545599485623412147247",
      "misprint: 58.14 to the inch is 228.9 to the decimetre; the key rounds that of 58",
    ),
    settByBrierley,
    [{ floatFactor: 1.3103934038583633, constant: 200, count: cottonOneInTex / 60 }],
    null,
  );

  it("by Brierley is 14.14 for ones in plain weave, whatever the exponent", () => {
    const factor = floatFactor({ averageFloat: 1, exponent: 0.39 });
    expect(factor).toBe(1);
    expect(settByBrierley({ floatFactor: factor, constant: 200, count: 1 })).toBeCloseTo(Math.SQRT2 * 10, 12);
  });

  it("by curvature is closer than by intersections, and nearer the diameters the longer the floats", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 40 }), fc.integer({ min: 10, max: 300 }), (ends, diameters) => {
        const weave = { diameters, ends, intersections: 2 };
        expect(settByCurvature(weave)).toBeGreaterThan(settByIntersections(weave));
        expect(settByIntersections({ ...weave, ends: ends + 1 })).toBeGreaterThan(settByIntersections(weave));
        expect(settByCurvature(weave)).toBeLessThan(diameters);
      }),
    );
  });

  it("is refused for a weave without intersections and a count of nothing", () => {
    expect(() => settByCurvature({ diameters: 52, ends: 2, intersections: 0 })).toThrow(QuantityError);
    expect(() => settByBrierley({ floatFactor: 1, constant: 200, count: 0 })).toThrow(QuantityError);
    expect(() => floatFactor({ averageFloat: 0, exponent: 0.39 })).toThrow(QuantityError);
  });
});

describe("a sett for a purpose", () => {
  cited(
    "ordinary cloth",
    published(osterkampSettRevisited, "items 4 to 6", "80 %", "80"),
    purposeShare,
    [{ purpose: "ordinary" }],
    ["to", percentOf],
  );
  cited(
    "upholstery",
    published(osterkampSettRevisited, "items 4 to 6", "90 %", "90"),
    purposeShare,
    [{ purpose: "upholstery" }],
    ["to", percentOf],
  );
  cited(
    "delicate cloth at the least",
    published(osterkampSettRevisited, "items 4 to 6", "50 %", "50"),
    purposeShare,
    [{ purpose: "delicate" }],
    ["from", percentOf],
  );
  cited(
    "delicate cloth at the most",
    published(osterkampSettRevisited, "items 4 to 6", "60 %", "60"),
    purposeShare,
    [{ purpose: "delicate" }],
    ["to", percentOf],
  );
  cited(
    "a good working sett",
    published(settPage, "whole page", "about 3/4 or slightly more", "75"),
    purposeShare,
    [{ purpose: "good working sett" }],
    ["from", percentOf],
  );
  cited(
    "four fifths of the 26 of 8/2 cotton",
    {
      source: osterkampSettRevisited,
      at: "items 4 to 6",
      status: "read",
      prints: "",
      exact: "20.8",
    },
    settForPurpose,
    [{ closest: endsPerInch(26), share: percentOf(80) }],
    endsPerInch,
  );
  cited(
    "rep, the low end of its range",
    published(hslu, "whole page", "13", "13"),
    settFromPlain,
    [{ plainSett: endsPerCentimetre("6.5"), times: 2 }],
    endsPerCentimetre,
  );

  it("lies below the closest", () => {
    const closest = endsPerInch(26);
    expect(settForPurpose({ closest, share: purposeShare({ purpose: "ordinary" }).to }).in(endsPerInch)).toBe(20.8);
    expect(settForPurpose({ closest, share: percentOf(100) }).in(endsPerInch)).toBe(26);
    expect(() => settForPurpose({ closest, share: percentOf(101) })).toThrow(QuantityError);
  });

  it("is not to be had for a purpose no source speaks of", () => {
    expect(() => purposeShare({ purpose: "rug" as never })).toThrow("ordinary");
  });
});
