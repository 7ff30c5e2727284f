import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  beamCount2015,
  brooks1892,
  brooksWoollenCalculations,
  davis1920,
  dooley1914,
  taylor1909,
  wrapping2024,
  yarnCount2015,
} from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import {
  cottonCount,
  drams,
  galashielsCut,
  grains,
  grams,
  inches,
  metricCount,
  ounces,
  pounds,
  tex,
  woollenRun,
  worstedCount,
  yards,
} from "../../units/index.js";
import type { Length, Mass } from "../../units/index.js";
import { countFromWrapping } from "./count-from-wrapping.js";

type Row = readonly [title: string, Citation, length: Length, mass: Mass, system: Unit<"length per mass">];

const rows: readonly Row[] = [
  [
    "34 yards of 8 grains",
    published(taylor1909, "p. 330, ch. XII", "35.41", "425/12", "cut off, not rounded"),
    yards(34),
    grains(8),
    cottonCount,
  ],
  [
    "2000 ends of 500 yards weigh 60 pounds",
    published(taylor1909, "p. 434", "19.84", "1250/63"),
    yards(1_000_000),
    pounds(60),
    cottonCount,
  ],
  [
    "504 ends of 14,256 yards weigh 301 pounds",
    published(brooks1892, "p. 153, ch. IX", "28.41", "42768/1505", "cut off, not rounded"),
    yards(7_185_024),
    pounds(301),
    cottonCount,
  ],
  [
    "420 ends of 2000 yards weigh 20 pounds",
    published(beamCount2015, "problems 1 to 3", "50", "50"),
    yards(840_000),
    pounds(20),
    cottonCount,
  ],
  [
    "four leas of 104 grains",
    published(beamCount2015, "problems 1 to 3", "38.4", "500/13", "cut off, not rounded"),
    yards(480),
    grains(104),
    cottonCount,
  ],
  [
    "24 yards of 4 grains are 50s",
    published(yarnCount2015, "problems 1 to 4", "50", "50"),
    yards(24),
    grains(4),
    cottonCount,
  ],
  [
    "a lea of 2.05 grams",
    published(wrapping2024, "example", "32", "6479891/205000"),
    yards(120),
    grams("2.05"),
    cottonCount,
  ],
  [
    "896 inches ravelled from 16 square inches weigh 8.6 grains",
    published(dooley1914, "experiment 60", "24", "28000/1161"),
    inches(896),
    grains("8.6"),
    cottonCount,
  ],
];

describe("a count found by weighing", () => {
  cited(
    "20 yards weighing 10 grains, worsted",
    { source: davis1920, at: "Ex. 1, p. 39", status: "read", prints: "25", exact: "25" },
    countFromWrapping,
    [{ length: yards(20), mass: grains(10), system: worstedCount }],
    worstedCount,
  );
  cited(
    "20 yards weighing 35 grains, worsted",
    { source: davis1920, at: "Ex. 2, p. 39", status: "read", prints: "7 1/7", exact: "50/7" },
    countFromWrapping,
    [{ length: yards(20), mass: grains(35), system: worstedCount }],
    worstedCount,
  );
  cited(
    "20 yards weighing 14 grains, merino",
    { source: davis1920, at: "Ex. 4, p. 40", status: "read", prints: "11.9", exact: "250/21" },
    countFromWrapping,
    [{ length: yards(20), mass: grains(14), system: cottonCount }],
    cottonCount,
  );
  cited(
    "a lea weighing 20 grains",
    { source: taylor1909, at: "site page 429", status: "read", prints: "50", exact: "50" },
    countFromWrapping,
    [{ length: yards(120), mass: grains(20), system: cottonCount }],
    cottonCount,
  );
  cited(
    "a hank weighing 100 grains",
    { source: brooks1892, at: "Wrapping", status: "read", prints: "70", exact: "70" },
    countFromWrapping,
    [{ length: yards(840), mass: grains(100), system: cottonCount }],
    cottonCount,
  );

  for (const [title, citation, length, mass, system] of rows) {
    cited(title, citation, countFromWrapping, [{ length, mass, system }], system);
  }

  cited(
    "20 yards weighing 2 drams, Galashiels",
    published(davis1920, "Ex. 5, p. 40", "12.8", "12.8"),
    countFromWrapping,
    [{ length: yards(20), mass: drams(2), system: galashielsCut }],
    galashielsCut,
  );
  cited(
    "20 yards weighing 1 1/4 drams, Galashiels",
    published(davis1920, "Ex. 6, p. 40", "20.4", "20.48", "misprint: grains for drams; and 20.48 is cut off"),
    countFromWrapping,
    [{ length: yards(20), mass: drams("1.25"), system: galashielsCut }],
    galashielsCut,
  );
  cited(
    "4000 yards weighing 5 ounces, run",
    published(brooksWoollenCalculations, "art. 5a", "8", "8"),
    countFromWrapping,
    [{ length: yards(4000), mass: ounces(5), system: woollenRun }],
    woollenRun,
  );
  cited(
    "200,000 yards weighing 15 pounds, run",
    published(brooksWoollenCalculations, "art. 5b", "8.33", "25/3"),
    countFromWrapping,
    [{ length: yards(200_000), mass: pounds(15), system: woollenRun }],
    woollenRun,
  );

  it("finds the count a length was weighed out for", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 2000 }), (count, length) => {
        const mass = pounds((length / 840 / count).toFixed(20));
        const found = countFromWrapping({ length: yards(length), mass, system: cottonCount }).in(cottonCount);
        expect(Math.abs(found - count)).toBeLessThan(1e-9 * count);
      }),
    );
  });

  it("answers in the system asked for", () => {
    const { unit } = countFromWrapping({ length: yards(120), mass: grains(20), system: metricCount });
    expect(unit).toBe("metricCount");
  });

  it("refuses a mass of nothing, a length for a mass and a direct system", () => {
    const input = { length: yards(120), mass: grains(20), system: cottonCount };
    expect(() => countFromWrapping({ ...input, mass: grains(0) })).toThrow("mass");
    expect(() => countFromWrapping({ ...input, mass: inches(3) as never })).toThrow("mass");
    expect(() => countFromWrapping({ ...input, system: tex as never })).toThrow("system");
  });
});
