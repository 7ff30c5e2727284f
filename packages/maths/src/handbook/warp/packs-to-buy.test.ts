import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { packsToBuy } from "./packs-to-buy.js";

describe("packages sold by the pack", () => {
  for (const [title, packages, packagesPerPack, exact] of [
    ["13 cones, six to a bag", 13, 6, "3"],
    ["12 cones, six to a bag", 12, 6, "2"],
    ["no cone at all", 0, 6, "0"],
  ] as const) {
    cited(title, byHand(commonPractice, exact), packsToBuy, [{ packages, packagesPerPack }]);
  }

  it("hold what is needed, and one pack fewer does not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 60 }), (packages, packagesPerPack) => {
        const packs = packsToBuy({ packages, packagesPerPack });
        expect(packs * packagesPerPack).toBeGreaterThanOrEqual(packages);
        expect((packs - 1) * packagesPerPack).toBeLessThan(packages);
      }),
    );
  });

  it("are refused for half a cone and for a pack of none", () => {
    expect(() => packsToBuy({ packages: 1.5, packagesPerPack: 6 })).toThrow("a whole number of packages");
    expect(() => packsToBuy({ packages: 1, packagesPerPack: 0 })).toThrow("1 or more");
  });
});
