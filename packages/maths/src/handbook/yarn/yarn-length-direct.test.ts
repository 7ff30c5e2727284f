import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { woodhouseKilgour1921 } from "#ci/sources.js";
import { cottonCount, grams, juteCount, juteSpyndles, pounds, tex, yards } from "../../units/index.js";
import { yarnLengthDirect } from "./yarn-length-direct.js";
import { yarnMassDirect } from "./yarn-mass-direct.js";

describe("the length of yarn in a mass, by a direct count", () => {
  cited(
    "a roll of 8 lb of 8 lb jute",
    published(woodhouseKilgour1921, "winding", "14400", "14400"),
    yarnLengthDirect,
    [{ mass: pounds(8), count: juteCount(8) }],
    yards,
  );
  cited(
    "a bundle of 56 lb of 7 lb jute is whole spyndles",
    published(woodhouseKilgour1921, "bundling", "exactly 56 lb", "8"),
    yarnLengthDirect,
    [{ mass: pounds(56), count: juteCount(7) }],
    juteSpyndles,
  );
  cited(
    "a bundle of 60 lb of 7 1/2 lb jute is whole spyndles",
    published(woodhouseKilgour1921, "bundling", "60 lb", "8"),
    yarnLengthDirect,
    [{ mass: pounds(60), count: juteCount("7.5") }],
    juteSpyndles,
  );

  it("weighs what it was found from", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 900 }), (mass, number) => {
        const length = yarnLengthDirect({ mass: grams(mass), count: tex(number) });
        expect(yarnMassDirect({ length, count: tex(number) }).in(grams)).toBeCloseTo(mass, 9);
      }),
    );
  });

  it("of nothing is nothing", () => {
    expect(yarnLengthDirect({ mass: grams(0), count: tex(30) }).value).toBe("0");
  });

  it("is refused for an indirect count and a count of nothing", () => {
    expect(() => yarnLengthDirect({ mass: grams(1), count: cottonCount(30) as never })).toThrow("count");
    expect(() => yarnLengthDirect({ mass: grams(1), count: tex(0) })).toThrow("count");
  });
});
