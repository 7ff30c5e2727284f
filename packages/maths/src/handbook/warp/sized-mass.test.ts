import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brooks1892, sizing2014 } from "#ci/sources.js";
import { cottonCount, percentAdded, pounds, yards } from "../../units/index.js";
import { sizeFromMasses } from "./size-from-masses.js";
import { sizedMass } from "./sized-mass.js";
import { unsizedMass } from "./unsized-mass.js";
import { warpMass } from "./warp-mass.js";

describe("size on a warp", () => {
  cited(
    "1300 lb with 25 % of size",
    published(brooks1892, "p. 153, ch. IX", "1625", "1625"),
    sizedMass,
    [{ unsizedMass: pounds(1300), size: percentAdded(25) }],
    pounds,
  );
  const mill = { ends: 3250, warpLength: yards(36_000), count: cottonCount(40), allowance: percentAdded(0) };
  cited(
    "3250 ends of 36,000 yards in 40s with 10 % of size",
    published(sizing2014, "problem A", "3830", "53625/14"),
    sizedMass,
    [{ unsizedMass: warpMass(mill), size: percentAdded(10) }],
    pounds,
  );
  it("comes off as it went on", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 0, max: 150 }), (mass, percent) => {
        const size = percentAdded(percent);
        const sized = sizedMass({ unsizedMass: pounds(mass), size });
        expect(unsizedMass({ sizedMass: sized, size }).in(pounds)).toBeCloseTo(mass, 10);
        expect(sizeFromMasses({ unsizedMass: pounds(mass), sizedMass: sized }).in(percentAdded)).toBeCloseTo(
          percent,
          8,
        );
      }),
    );
  });
});

describe("the limits of sized mass", () => {
  limits(
    sizedMass,
    ["is the mass itself without size", { unsizedMass: pounds(90), size: percentAdded(0) }, 90, pounds],
    { unsizedMass: pounds(0), size: percentAdded(-1) },
  );
});
