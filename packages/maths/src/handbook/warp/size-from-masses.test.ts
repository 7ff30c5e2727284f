import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brooks1892, sizingProblems } from "#ci/sources.js";
import type { Mass } from "../../units/index.js";
import { cottonCount, percentAdded, pounds, yards } from "../../units/index.js";
import { sizeFromMasses } from "./size-from-masses.js";
import { warpMass } from "./warp-mass.js";

describe("size on a warp", () => {
  const sizes: readonly (readonly [string, Citation, unsized: Mass, sized: Mass])[] = [
    [
      "1300 lb that come out at 1639",
      published(brooks1892, "p. 153, ch. IX", "26.07", "339/13", "cut off, not rounded"),
      pounds(1300),
      pounds(1639),
    ],
    ["4 lb on 10 lb of cotton", published(brooks1892, "p. 33, ch. III", "40", "40"), pounds(10), pounds(14)],
    [
      "2800 ends of 1000 yards in 45s that come out at 80 lb",
      published(sizingProblems, "problem 1", "8", "8"),
      warpMass({ ends: 2800, warpLength: yards(1000), count: cottonCount(45), allowance: percentAdded(0) }),
      pounds(80),
    ],
  ];
  for (const [title, citation, unsized, sized] of sizes) {
    cited(title, citation, sizeFromMasses, [{ unsizedMass: unsized, sizedMass: sized }], percentAdded);
  }
  it("is refused where the sized warp is the lighter", () => {
    expect(() => sizeFromMasses({ unsizedMass: pounds(10), sizedMass: pounds(9) })).toThrow("sizeFromMasses(…)");
  });
});

describe("the limits of size from masses", () => {
  limits(
    sizeFromMasses,
    [
      "is none where the warp weighs as much as before",
      { unsizedMass: pounds(90), sizedMass: pounds(90) },
      0,
      percentAdded,
    ],
    { unsizedMass: pounds(0), sizedMass: pounds(0) },
  );
});
