import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { osterkampAshenhurst, settSinglePage, taylor1909 } from "#ci/sources.js";
import { diametersPerInch, endsPerInch } from "../../units/index.js";
import { settByCurvature } from "./sett-by-curvature.js";
import { settByIntersections } from "./sett-by-intersections.js";

describe("the closest sett", () => {
  cited(
    "52 diameters in plain weave",
    published(settSinglePage, "whole page", "26", "26"),
    settByIntersections,
    [{ diameters: diametersPerInch(52), ends: 2, intersections: 2 }],
    endsPerInch,
  );
  cited(
    "52 diameters in 2/2 twill",
    published(settSinglePage, "whole page", "34", "104/3", "cut off, not rounded"),
    settByIntersections,
    [{ diameters: diametersPerInch(52), ends: 4, intersections: 2 }],
    endsPerInch,
  );
  cited(
    "24s cotton in 2/1 twill",
    published(taylor1909, "p. 338, ch. XII", "81", "81"),
    settByIntersections,
    [{ diameters: diametersPerInch(135), ends: 3, intersections: 2 }],
    endsPerInch,
  );
  cited(
    "10 wraps to the inch, in plain weave at the closest",
    published(osterkampAshenhurst, "whole article", "7", "50/7"),
    settByIntersections,
    [{ diameters: diametersPerInch(10 / 0.7), ends: 2, intersections: 2 }],
    endsPerInch,
  );
  it("by curvature is closer than by intersections, and nearer the diameters the longer the floats", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 40 }), fc.integer({ min: 10, max: 300 }), (ends, diameters) => {
        const weave = { diameters: diametersPerInch(diameters), ends, intersections: 2 };
        const [bent, straight] = [settByCurvature(weave), settByIntersections(weave)].map((one) => one.in(endsPerInch));
        expect(bent).toBeGreaterThan(Number(straight));
        expect(settByIntersections({ ...weave, ends: ends + 1 }).in(endsPerInch)).toBeGreaterThan(Number(straight));
        expect(bent).toBeLessThan(diameters);
      }),
    );
  });
});

describe("the limits of sett by intersections", () => {
  limits(
    settByIntersections,
    [
      "of plain weave is half the diameters",
      { diameters: diametersPerInch(40), ends: 1, intersections: 1 },
      20,
      endsPerInch,
    ],
    { diameters: diametersPerInch(0), ends: 0, intersections: 0 },
  );
});
