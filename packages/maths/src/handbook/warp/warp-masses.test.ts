import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import type { Unit } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  brooks1892,
  clothQuantities,
  fabricProduction2015,
  sizing2014,
  sizingProblems,
  sunnano,
  textileSchoolWeaving,
  wolfensberger1921,
} from "../../sources/index.js";
import {
  cottonCount,
  dramSilk,
  kilograms,
  metres,
  metresPerKilogram,
  ounces,
  percentAdded,
  pounds,
  yards,
} from "../../units/index.js";
import type { IndirectCount, Length, Mass } from "../../units/index.js";
import { yarnLength } from "../yarn/index.js";
import { sizeFromMasses } from "./size-from-masses.js";
import { sizedCount } from "./sized-count.js";
import { sizedMass } from "./sized-mass.js";
import { unsizedMass } from "./unsized-mass.js";
import { warpMassDirect } from "./warp-mass-direct.js";
import { warpMass } from "./warp-mass.js";

const at = (page: number, disposition: number): string => `p. ${String(page)}, disposition ${String(disposition)}`;

describe("mass of a warp of silk, drams to 1000 yards, 4 % of waste", () => {
  const rows: readonly (readonly [string, Citation, ends: number, length: number, dram: string])[] = [
    [
      "taffeta, 4032 ends of 110 yards",
      published(wolfensberger1921, at(76, 1), "2.65", "1324323/500000"),
      4032,
      110,
      "1.47",
    ],
    [
      "surah, 3864 ends of 54 yards",
      published(wolfensberger1921, at(80, 2), "1.10", "2203929/2000000"),
      3864,
      54,
      "1.3",
    ],
    [
      "armure, 4784 ends of 64 yards",
      published(wolfensberger1921, at(88, 4), "1.84", "143819/78125"),
      4784,
      64,
      "1.48",
    ],
    [
      "printed armure, 3984 ends of 54 yards",
      published(wolfensberger1921, at(92, 5), "1.31", "262197/200000"),
      3984,
      54,
      "1.5",
    ],
    [
      "black, 6132 ends of 106 yards",
      published(wolfensberger1921, at(98, 6), "3.56", "28518399/8000000"),
      6132,
      106,
      "1.35",
    ],
    [
      "sky, 1680 ends of 106 yards",
      published(wolfensberger1921, at(98, 6), "0.83", "332787/400000"),
      1680,
      106,
      "1.15",
    ],
  ];
  for (const [title, citation, ends, length, dram] of rows) {
    const input = { ends, warpLength: yards(length), count: dramSilk(dram), waste: percentAdded(4) };
    cited(title, citation, warpMassDirect, [input], pounds);
  }
  cited(
    "the surah in ounces",
    published(wolfensberger1921, at(80, 2), "17.06", "2203929/125000", "misprint: 0.10 lb is 1.6 oz, printed 1.06"),
    warpMassDirect,
    [{ ends: 3864, warpLength: yards(54), count: dramSilk("1.3"), waste: percentAdded(4) }],
    ounces,
  );
});

describe("mass of a warp by an indirect count", () => {
  type Row = readonly [string, Citation, number, Length, IndirectCount, waste: number, Unit<"mass">];
  const rows: readonly Row[] = [
    [
      "504 ends of 110 yards of 100/2 cotton, 4 % of waste",
      published(wolfensberger1921, at(99, 6), "1.37", "858/625"),
      ...([504, yards(110), cottonCount(50), 4, pounds] as const),
    ],
    [
      "250 ends of 5.6 m of rug warp, 12/6 at 1400 m to the kilogram and count",
      published(sunnano, "whole page", "0.5", "0.5"),
      ...([250, metres("5.6"), metresPerKilogram(2800), 0, kilograms] as const),
    ],
    [
      "3240 ends of 42 yards of 32s",
      published(clothQuantities, "example", "", "5.0625"),
      ...([3240, yards(42), cottonCount(32), 0, pounds] as const),
    ],
  ];
  for (const [title, citation, ends, warpLength, count, waste, unit] of rows) {
    cited(title, citation, warpMass, [{ ends, warpLength, count, waste: percentAdded(waste) }], unit);
  }

  it("grows with the ends and with the waste", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 0, max: 50 }), (ends, waste) => {
        const input = { ends, warpLength: yards(8), count: cottonCount(4), waste: percentAdded(waste) };
        const mass = warpMass(input).in(pounds);
        expect(warpMass({ ...input, ends: ends + 1 }).in(pounds)).toBeGreaterThan(mass);
        expect(warpMass({ ...input, waste: percentAdded(waste + 1) }).in(pounds)).toBeGreaterThan(mass);
      }),
    );
  });

  it("takes the waste as a percentage added, not lost", () => {
    const input = { ends: 400, warpLength: yards(8), count: cottonCount(4) };
    expect(() => warpMass(input as never)).toThrow(/waste/u);
    expect(() => warpMass({ ...input, waste: pounds(1) as never })).toThrow(QuantityError);
  });
});

describe("constants of the mill for warp and weft", () => {
  cited(
    "metres in a kilogram of ones cotton",
    published(
      fabricProduction2015,
      "formula list",
      "1693.6",
      "10972800000/6479891",
      "misprint: 1693.36; the weft constant of the same list fits that",
    ),
    yarnLength,
    [{ mass: kilograms(1), count: cottonCount(1) }],
    metres,
  );
  cited(
    "yards in a kilogram of ones cotton",
    published(textileSchoolWeaving, "formula list", "1848", "12000000000/6479891", "2.2 lb to the kilogram: 2.2 × 840"),
    yarnLength,
    [{ mass: kilograms(1), count: cottonCount(1) }],
    yards,
  );
});

describe("size on a warp", () => {
  cited(
    "1300 lb with 25 % of size",
    published(brooks1892, "p. 153, ch. IX", "1625", "1625"),
    sizedMass,
    [{ unsizedMass: pounds(1300), size: percentAdded(25) }],
    pounds,
  );
  const mill = { ends: 3250, warpLength: yards(36_000), count: cottonCount(40), waste: percentAdded(0) };
  cited(
    "3250 ends of 36,000 yards in 40s with 10 % of size",
    published(sizing2014, "problem A", "3830", "53625/14"),
    sizedMass,
    [{ unsizedMass: warpMass(mill), size: percentAdded(10) }],
    pounds,
  );
  cited(
    "5 lb 9 1/4 oz of which half is size",
    published(
      brooks1892,
      "p. 150, ch. IX",
      "2 lb 12 1/4 oz",
      "44.625",
      "the other half is printed 2 lb 13 oz, so that the two add up",
    ),
    unsizedMass,
    [{ sizedMass: ounces("89.25"), size: percentAdded(100) }],
    ounces,
  );
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
      warpMass({ ends: 2800, warpLength: yards(1000), count: cottonCount(45), waste: percentAdded(0) }),
      pounds(80),
    ],
  ];
  for (const [title, citation, unsized, sized] of sizes) {
    cited(title, citation, sizeFromMasses, [{ unsizedMass: unsized, sizedMass: sized }], percentAdded);
  }
  cited(
    "45s with 8 % of size",
    published(sizingProblems, "problem 1", "41.67", "125/3"),
    sizedCount,
    [{ count: cottonCount(45), size: percentAdded(8) }],
    cottonCount,
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

  it("is refused where the sized warp is the lighter", () => {
    expect(() => sizeFromMasses({ unsizedMass: pounds(10), sizedMass: pounds(9) })).toThrow(QuantityError);
  });
});
