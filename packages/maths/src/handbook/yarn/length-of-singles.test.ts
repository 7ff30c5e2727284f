import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { kilograms, kilometres, metres, percentAdded, percentLost, tex } from "../../units/index.js";
import { lengthOfSingles } from "./length-of-singles.js";
import { yarnLengthDirect } from "./yarn-length-direct.js";

describe("the length of the singles of a folded yarn", () => {
  cited(
    "5 tonnes of 50 tex, 1.06 times as long before twisting",
    published(gateTextile, "2014, Q37", "106000", "106000"),
    lengthOfSingles,
    [{ foldedLength: kilometres(100000), contraction: percentAdded(6) }],
    kilometres,
  );

  it("grows with the take-up, and is the folded length where nothing is taken up", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 0, max: 90 }), (length, more) => {
        const singles = (percent: number): number =>
          lengthOfSingles({ foldedLength: metres(length), contraction: percentAdded(percent) }).in(metres);
        expect(singles(0)).toBe(length);
        expect(singles(more + 1)).toBeGreaterThan(singles(more));
      }),
    );
  });

  it("goes with the length of the yarn in a mass", () => {
    const foldedLength = yarnLengthDirect({ mass: kilograms(5000), count: tex(50) });
    expect(lengthOfSingles({ foldedLength, contraction: percentAdded(6) }).in(kilometres)).toBe(106000);
  });

  it("is refused with a percentage of the other base", () => {
    const input = { foldedLength: metres(1), contraction: percentLost(6) as never };
    expect(() => lengthOfSingles(input)).toThrow("expected a percentage added");
  });
});
