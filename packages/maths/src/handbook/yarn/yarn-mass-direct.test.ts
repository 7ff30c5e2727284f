import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { silkMillGuide1920, woodhouseKilgour1921 } from "#ci/sources.js";
import {
  denier,
  grains,
  grams,
  juteCount,
  juteSpyndles,
  kilometres,
  metres,
  metricCount,
  pounds,
  tex,
  yards,
} from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { yarnMassDirect } from "./yarn-mass-direct.js";
import { yarnMass } from "./yarn-mass.js";

describe("mass of a length of yarn, from its direct count", () => {
  cited(
    "8 spyndles of 7 lb jute fill a bundle",
    published(woodhouseKilgour1921, "bundling", "56", "56"),
    yarnMassDirect,
    [{ length: juteSpyndles(8), count: juteCount(7) }],
    pounds,
  );
  cited(
    "8 spyndles of 7 1/2 lb jute fill a larger bundle",
    published(woodhouseKilgour1921, "bundling", "60", "60"),
    yarnMassDirect,
    [{ length: juteSpyndles(8), count: juteCount("7.5") }],
    pounds,
  );
  cited(
    "638 yards of one denier weigh a grain",
    published(silkMillGuide1920, "opening page", "1", "589280/589081"),
    yarnMassDirect,
    [{ length: yards(638), count: denier(1) }],
    grains,
  );

  it("of a kilometre of 30 tex is 30 grams", () => {
    expect(yarnMassDirect({ length: kilometres(1), count: tex(30) }).in(grams)).toBe(30);
  });

  it("of no yarn is nothing", () => {
    expect(yarnMassDirect({ length: metres(0), count: tex(30) }).in(grams)).toBe(0);
  });

  it("agrees with the mass from the indirect count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 5000 }), (long, number) => {
        const length = metres(long);
        const direct = yarnMassDirect({ length, count: tex(number) }).in(grams);
        const indirect = yarnMass({ length, count: convertCount(tex(number), metricCount).count }).in(grams);
        expect(Math.abs(indirect - direct)).toBeLessThanOrEqual(1e-12 * direct);
      }),
    );
  });

  it("refuses a count of nothing, and an indirect count", () => {
    expect(() => yarnMassDirect({ length: metres(5), count: tex(0) })).toThrow("count");
    expect(() => yarnMassDirect({ length: metres(5), count: metricCount(30) as never })).toThrow("count");
  });
});
