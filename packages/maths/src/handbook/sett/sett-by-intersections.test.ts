import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { osterkampAshenhurst, settPage, taylor1909 } from "../../sources/index.js";
import { settByCurvature } from "./sett-by-curvature.js";
import { settByIntersections } from "./sett-by-intersections.js";

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
    "10 wraps to the inch, in plain weave at the closest",
    published(osterkampAshenhurst, "whole article", "7", "50/7"),
    settByIntersections,
    [{ diameters: 10 / 0.7, ends: 2, intersections: 2 }],
    null,
  );
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
});
