import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches, percentLost } from "../../units/index.js";
import { lossFromMeasures } from "./loss-from-measures.js";
import { twistedFringe } from "./twisted-fringe.js";

describe("a fringe once it is twisted", () => {
  cited(
    "of five inches, an eighth lost in twisting",
    byHand(commonPractice, "35/8"),
    twistedFringe,
    [{ fringeEachEnd: inches(5), twist: percentLost("12.5") }],
    inches,
  );

  it("is the fringe × after ÷ before, by two measures of it", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 300 }), fc.integer({ min: 1, max: 300 }), (before, part) => {
        const after = 1 + (part % (before - 1));
        const twist = lossFromMeasures({ before: inches(before), after: inches(after) });
        const twisted = twistedFringe({ fringeEachEnd: centimetres(before), twist });
        expect(twisted.in(centimetres)).toBeCloseTo(after, 12);
      }),
    );
  });
  it("is as it was where nothing is lost, and is refused where all of it is", () => {
    expect(twistedFringe({ fringeEachEnd: inches(4), twist: percentLost(0) }).in(inches)).toBe(4);
    expect(() => twistedFringe({ fringeEachEnd: inches(4), twist: percentLost(100) })).toThrow("less than 100 %");
  });
});
