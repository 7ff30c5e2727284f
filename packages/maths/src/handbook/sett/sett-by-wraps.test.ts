import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { creativeThreadsSett, fiberaddictYarn, hsluFadendichte, osterkampAshenhurst } from "#ci/sources.js";
import { centimetres, endsPerCentimetre, endsPerInch, inches, millimetres } from "../../units/index.js";
import { settByWraps } from "./sett-by-wraps.js";

describe("a sett from wraps", () => {
  const plain = { ends: 2, intersections: 2 };

  cited(
    "10 wraps to the inch in plain weave",
    published(osterkampAshenhurst, "whole article", "5", "5"),
    settByWraps,
    [{ wraps: 10, width: inches(1), ends: 2, intersections: 2 }],
    endsPerInch,
  );
  cited(
    "14 wraps to the centimetre in plain weave",
    published(creativeThreadsSett, "whole article", "7", "7"),
    settByWraps,
    [{ wraps: 14, width: centimetres(1), ends: 2, intersections: 2 }],
    endsPerCentimetre,
  );
  cited(
    "13 wraps to the centimetre in plain weave",
    published(hsluFadendichte, "whole page", "6.5", "6.5"),
    settByWraps,
    [{ wraps: 13, width: millimetres(10), ends: 2, intersections: 2 }],
    endsPerCentimetre,
  );
  cited(
    "13 wraps to the centimetre in 2/2 twill",
    published(hsluFadendichte, "whole page", "8.5", "26/3", "the third of 6.5 is rounded to 2"),
    settByWraps,
    [{ wraps: 13, width: millimetres(10), ends: 4, intersections: 2 }],
    endsPerCentimetre,
  );

  it("is the same from twice the wraps on twice the width, and closer in twill", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 40 }), (wraps, width) => {
        const once = settByWraps({ wraps, width: inches(width), ...plain }).in(endsPerInch);
        const twice = settByWraps({ wraps: 2 * wraps, width: inches(2 * width), ...plain });
        expect(twice.in(endsPerInch)).toBeCloseTo(once, 9);
        const twill = settByWraps({ wraps, width: inches(width), ends: 4, intersections: 2 });
        expect(twill.in(endsPerInch)).toBeGreaterThan(once);
      }),
    );
  });

  it("is refused for half a wrap, no width and a weave without intersections", () => {
    const input = { wraps: 10, width: inches(1), ...plain };
    expect(() => settByWraps({ ...input, wraps: 10.5 })).toThrow("wraps");
    expect(() => settByWraps({ ...input, width: inches(0) })).toThrow("width");
    expect(() => settByWraps({ ...input, intersections: 0 })).toThrow("intersections");
  });
});

describe("setts of one weaver's rule", () => {
  const wrapped = { wraps: 22, width: inches(1) };
  const plain = { ...wrapped, ends: 2, intersections: 2 };
  const twill = { ...wrapped, ends: 4, intersections: 2 };
  cited(
    "half the wraps in plain weave",
    published(fiberaddictYarn, "post", "11", "11"),
    settByWraps,
    [plain],
    endsPerInch,
  );
  cited("two thirds in twill", published(fiberaddictYarn, "post", "15", "44/3"), settByWraps, [twill], endsPerInch);
});
