import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, ounces } from "../../units/index.js";
import { packagesToBuy } from "../warp/index.js";
import { yarnMissing } from "./yarn-missing.js";
import { yarnSpare } from "./yarn-spare.js";

describe("yarn over in the end", () => {
  cited(
    "two packages of 8 ounces and 3 on hand, for 17 1/2",
    byHand(commonPractice, "1.5"),
    yarnSpare,
    [{ onHand: ounces(3), packages: 2, packageMass: ounces(8), needed: ounces("17.5") }],
    ounces,
  );

  it("is less than a package where as many were bought as were missing", () => {
    fc.assert(
      fc.property(fc.nat(900), fc.nat(900), fc.integer({ min: 1, max: 100 }), (hand, need, size) => {
        const [onHand, needed, packageMass] = [grams(hand), grams(need), grams(size)];
        const packages = packagesToBuy({ needed: yarnMissing({ onHand, needed }), packageMass });
        const spare = yarnSpare({ onHand, packages, packageMass, needed }).in(grams);
        expect(spare).toBeGreaterThanOrEqual(0);
        if (packages > 0) expect(spare).toBeLessThan(size);
        else expect(spare).toBe(hand - need);
      }),
    );
  });
  it("is refused where it is not enough", () => {
    const short = { onHand: ounces(1), packages: 2, packageMass: ounces(8), needed: ounces("17.5") };
    expect(() => yarnSpare(short)).toThrow("0 or more");
  });
});
