import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import {
  allFiberArtsPricing,
  brooks1892,
  brooksWoollenCalculations,
  horsensVaevekreds,
  howardBullough1909,
  jeanWeaves2014,
  mallikerta,
  measuredThreads,
  nasmith1890,
  sizing2014,
  sizingProblems,
  spinningSheet,
  sunnano,
  taylor1909,
  yarnCount2015,
} from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import type { IndirectCount, Length } from "../../units/index.js";
import {
  cottonCount,
  grains,
  grams,
  inches,
  kilograms,
  metres,
  metresPerKilogram,
  ounces,
  pounds,
  tex,
  woollenRun,
  yards,
  yardsPerPound,
} from "../../units/index.js";
import { yarnMassDirect } from "./yarn-mass-direct.js";
import { yarnMass } from "./yarn-mass.js";

type Row = readonly [title: string, Citation, length: Length, count: IndirectCount, Unit<"mass">];

const rows: readonly Row[] = [
  [
    "16 yards of 20s",
    published(taylor1909, "p. 331, ch. XII", "6.6", "20/3", "cut off, not rounded"),
    yards(16),
    cottonCount(20),
    grains,
  ],
  [
    "2100 ends of 95 yards in 30s: 7 lb 14 2/3 oz",
    published(taylor1909, "p. 312, ch. XII", "7 lb 14 2/3 oz", "380/3"),
    yards(199_500),
    cottonCount(30),
    ounces,
  ],
  [
    "1860 ends of 102 yards in 45s",
    published(taylor1909, "pp. 344 and 345, ch. XII", "5", "527/105"),
    yards(189_720),
    cottonCount(45),
    pounds,
  ],
  [
    "1240 ends of 102 yards in 20s",
    published(taylor1909, "pp. 344 and 345, ch. XII", "7 1/2", "527/70", "rounded to the half pound"),
    yards(126_480),
    cottonCount(20),
    pounds,
  ],
  [
    "a lea of 25s weighs 40 grains",
    published(howardBullough1909, "p. 233", "40", "40"),
    yards(120),
    cottonCount(25),
    grains,
  ],
  [
    "52 1/2 hanks of 10s weigh 5 lb 4 oz",
    published(nasmith1890, "table 4", "5 lb 4 oz", "84"),
    yards(44_100),
    cottonCount(10),
    ounces,
  ],
  [
    "44 hanks of 16s weigh 2 lb 12 oz",
    published(nasmith1890, "table 4", "2 lb 12 oz", "44"),
    yards(36_960),
    cottonCount(16),
    ounces,
  ],
  [
    "38 hanks of 28s weigh 1 lb 5 3/4 oz",
    published(nasmith1890, "table 4", "1 lb 5 3/4 oz", "152/7", "rounded to the quarter ounce"),
    yards(31_920),
    cottonCount(28),
    ounces,
  ],
  [
    "15 yards of 40s, on a trade page",
    published(
      yarnCount2015,
      "problems 1 to 4",
      "1 7/3",
      "25/8",
      "misprint: 15 × 25 ÷ 120 is printed 25 × 25 ÷ 120; it is 3 1/8",
    ),
    yards(15),
    cottonCount(40),
    grains,
  ],
  [
    "2800 ends of 1000 yards in 45s, unsized",
    published(sizingProblems, "problem 1", "74.07", "2000/27"),
    yards(2_800_000),
    cottonCount(45),
    pounds,
  ],
  [
    "3250 ends of 36,000 yards in 40s, unsized",
    published(sizing2014, "problem A", "3482", "24375/7"),
    yards(117_000_000),
    cottonCount(40),
    pounds,
  ],
  [
    "3240 yards at 2240 to the pound",
    published(allFiberArtsPricing, "worked example", "1.45", "81/56"),
    yards(3240),
    yardsPerPound(2240),
    pounds,
  ],
  [
    "34,560 yards at 8400 to the pound, warp and weft",
    published(jeanWeaves2014, "whole page", "4.114", "144/35"),
    yards(34_560),
    yardsPerPound(8400),
    pounds,
  ],
  [
    "550 ends of 3.2 metres at 13,500 metres to the kilogram",
    published(horsensVaevekreds, "whole page", "130", "3520/27"),
    metres(1760),
    metresPerKilogram(13500),
    grams,
  ],
  [
    "8800 yards of 5 1/2 run",
    published(brooksWoollenCalculations, "art. 3a", "16", "16"),
    yards(8800),
    woollenRun("5.5"),
    ounces,
  ],
  [
    "two leas of ones: the dividend for grains",
    published(taylor1909, "site page 430", "2000", "2000"),
    yards(240),
    cottonCount(1),
    grains,
  ],
  [
    "seven leas of ones: the dividend for grains",
    published(taylor1909, "site page 430", "7000", "7000"),
    yards(840),
    cottonCount(1),
    grains,
  ],
  [
    "a lea of ones in grams",
    published(
      spinningSheet,
      "wrapping",
      "64.81",
      "6479891/100000",
      "1000 grains are 64.799 g: the constant is 0.017 % high",
    ),
    yards(120),
    cottonCount(1),
    grams,
  ],
  [
    "a hank of ones: the dividend for grains",
    published(howardBullough1909, "p. 233", "7600", "7000", "misprint: 840 yards of ones weigh 7000 grains"),
    yards(840),
    cottonCount(1),
    grains,
  ],
  [
    "30 yards of ones: the dividend for grains",
    published(howardBullough1909, "p. 233", "250", "250"),
    yards(30),
    cottonCount(1),
    grains,
  ],
  [
    "7 yards of ones: the dividend for grains",
    published(howardBullough1909, "p. 233", "58.33", "175/3"),
    yards(7),
    cottonCount(1),
    grains,
  ],
  [
    "43 1/2 hanks of 20s weigh 2 lb 2 1/2 oz",
    published(nasmith1890, "table 4", "2 lb 2 1/2 oz", "174/5", "cut off to the half ounce"),
    yards(36_540),
    cottonCount(20),
    ounces,
  ],
  [
    "42 1/2 hanks of 24s weigh 1 lb 12 1/4 oz",
    published(nasmith1890, "table 4", "1 lb 12 1/4 oz", "85/3", "cut off to the quarter ounce"),
    yards(35_700),
    cottonCount(24),
    ounces,
  ],
  [
    "33 hanks of 36s weigh 14 1/2 oz",
    published(nasmith1890, "table 4", "14 1/2", "44/3", "cut off to the half ounce"),
    yards(27_720),
    cottonCount(36),
    ounces,
  ],
  [
    "30 1/2 hanks of 40s weigh 12 oz",
    published(nasmith1890, "table 4", "12", "61/5"),
    yards(25_620),
    cottonCount(40),
    ounces,
  ],
  [
    "250 ends of 5.6 metres of 12/6, bought at 1400 metres a count",
    published(sunnano, "whole page", "0.5", "0.5"),
    metres(1400),
    metresPerKilogram(2800),
    kilograms,
  ],
];

describe("the mass of a length of yarn", () => {
  cited(
    "9240 yards of 44s",
    { source: brooks1892, at: "Having the length and count", status: "read", prints: "1/4", exact: "1/4" },
    yarnMass,
    [{ length: yards(9240), count: cottonCount(44) }],
    pounds,
  );
  cited(
    "a lea of 40s weighs 25 grains",
    { source: taylor1909, at: "site page 430", status: "read", prints: "25", exact: "25" },
    yarnMass,
    [{ length: yards(120), count: cottonCount(40) }],
    grains,
  );
  cited(
    "warp of 2260 ends, 38 yards, 30s",
    {
      source: brooks1892,
      at: "site page 96",
      status: "read",
      prints: "3.407",
      exact: "42940/12600",
      differs: "cut off, not rounded: 3.4079",
    },
    yarnMass,
    [{ length: yards(85880), count: cottonCount(30) }],
    pounds,
  );
  cited(
    "17280 yards at 8400 to the pound",
    { source: jeanWeaves2014, at: "whole post", status: "read", prints: "2.057", exact: "72/35" },
    yarnMass,
    [{ length: yards(17280), count: yardsPerPound(8400) }],
    pounds,
  );
  cited(
    "86640 yards of 30s",
    {
      source: brooks1892,
      at: "chapter on calculations",
      status: "read",
      prints: "3 7/16",
      exact: "361/105",
      differs: "rounded to the ounce",
    },
    yarnMass,
    [{ length: yards(86640), count: cottonCount(30) }],
    pounds,
  );
  cited(
    "2112 yards at 3360 to the pound",
    { source: measuredThreads, at: "whole entry", status: "read", prints: "almost 2/3", exact: "22/35" },
    yarnMass,
    [{ length: yards(2112), count: yardsPerPound(3360) }],
    pounds,
  );
  cited(
    "5.8 m of 269 ends at 2560 metres to the kilogram",
    {
      source: mallikerta,
      at: "Pohja-en-4",
      status: "read",
      prints: "600",
      exact: "609.453125",
      differs: "misprint: the 4 extra selvedge ends are left out",
    },
    yarnMass,
    [{ length: metres("1560.2"), count: metresPerKilogram(2560) }],
    grams,
  );
  cited(
    "a metre of 265 ends at 2560 metres to the kilogram",
    { source: mallikerta, at: "Pohja-en-4", status: "read", prints: "104", exact: "103.515625" },
    yarnMass,
    [{ length: metres(265), count: metresPerKilogram(2560) }],
    grams,
  );
  cited(
    "a metre of 215 ends at 2560 metres to the kilogram",
    {
      source: mallikerta,
      at: "Colourful checks",
      status: "read",
      prints: "85",
      exact: "83.984375",
      differs: "printed a gram high",
    },
    yarnMass,
    [{ length: metres(215), count: metresPerKilogram(2560) }],
    grams,
  );

  for (const [title, citation, length, count, unit] of rows) {
    cited(title, citation, yarnMass, [{ length, count }], unit);
  }

  it("grows with the length and falls with the count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100000 }), fc.integer({ min: 1, max: 300 }), (length, count) => {
        const mass = yarnMass({ length: yards(length), count: cottonCount(count) }).in(pounds);
        expect(yarnMass({ length: yards(length + 1), count: cottonCount(count) }).in(pounds)).toBeGreaterThan(mass);
        expect(yarnMass({ length: yards(length), count: cottonCount(count + 1) }).in(pounds)).toBeLessThan(mass);
      }),
    );
  });

  it("of no length is nothing, and of a direct count is length times tex", () => {
    expect(yarnMass({ length: yards(0), count: cottonCount(20) }).value).toBe("0");
    expect(yarnMassDirect({ length: metres(1560), count: tex(360) }).in(grams)).toBe(561.6);
  });

  it("refuses a direct count where an indirect one is wanted, and the reverse", () => {
    expect(() => yarnMass({ length: yards(3), count: tex(3) as never })).toThrow("count");
    expect(() => yarnMassDirect({ length: inches(3), count: cottonCount(3) as never })).toThrow("count");
  });
});
