import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, ounces } from "../../units/index.js";
import { yarnSpareOfSizes } from "./yarn-spare-of-sizes.js";
import { yarnSpare } from "./yarn-spare.js";

describe("yarn over of packages of several sizes", () => {
  cited(
    "two of 16 ounces, one of 4, and 3 on hand, for 38 1/4",
    byHand(commonPractice, "0.75"),
    yarnSpareOfSizes,
    [{ onHand: ounces(3), packages: [2, 1], packageMass: [ounces(16), ounces(4)], needed: ounces("38.25") }],
    ounces,
  );

  it("of one size is what it is of that size alone", () => {
    fc.assert(
      fc.property(fc.nat(900), fc.nat(9), fc.integer({ min: 1, max: 100 }), (hand, packages, size) => {
        const shared = { onHand: grams(hand), needed: grams(hand) };
        const one = yarnSpare({ ...shared, packages, packageMass: grams(size) });
        const several = yarnSpareOfSizes({ ...shared, packages: [packages], packageMass: [grams(size)] });
        expect(several.in(grams)).toBe(one.in(grams));
      }),
    );
  });
  it("is refused where it is not enough", () => {
    const bought = { packages: [1], packageMass: [ounces(4)] };
    expect(() => yarnSpareOfSizes({ onHand: ounces(0), ...bought, needed: ounces(5) })).toThrow("0 or more");
  });
});
