import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { measuredThreads } from "#ci/sources.js";
import { grams, ounces, pounds, yards, yardsPerPound } from "../../units/index.js";
import { yarnMass } from "../yarn/index.js";
import { packagesToBuy } from "./packages-to-buy.js";

describe("packages to buy", () => {
  cited(
    "2112 yards at 3360 to the pound, in half-pound cones",
    published(measuredThreads, "whole entry", "", "2"),
    packagesToBuy,
    [{ needed: yarnMass({ length: yards(2112), count: yardsPerPound(3360) }), packageMass: ounces(8) }],
  );

  it("for 17 ounces, in packages of 8, are three", () => {
    expect(packagesToBuy({ needed: ounces(17), packageMass: ounces(8) })).toBe(3);
  });

  it("are not one more where the yarn comes out even, nor any for no yarn", () => {
    expect(packagesToBuy({ needed: pounds(1), packageMass: ounces(8) })).toBe(2);
    expect(packagesToBuy({ needed: ounces(0), packageMass: ounces(8) })).toBe(0);
  });

  it("hold the yarn, and without the last do not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 500 }), (needed, packed) => {
        const packages = packagesToBuy({ needed: grams(needed), packageMass: grams(packed) });
        expect(packages * packed).toBeGreaterThanOrEqual(needed);
        expect((packages - 1) * packed).toBeLessThan(needed);
      }),
    );
  });

  it("refuses a package that holds nothing, and a length of yarn", () => {
    expect(() => packagesToBuy({ needed: ounces(17), packageMass: ounces(0) })).toThrow("packageMass");
    expect(() => packagesToBuy({ needed: yards(17) as never, packageMass: ounces(8) })).toThrow("needed");
  });
});
