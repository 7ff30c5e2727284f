import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  blanco1917,
  brooks1892,
  clothQuantities,
  commonPractice,
  creativeThreadsWeft,
  durhamWeaver,
  fabricProduction2015,
  taylor1909,
  wolfensberger1921,
} from "../../sources/index.js";
import {
  centimetres,
  cottonCount,
  dramSilk,
  inches,
  kilograms,
  metres,
  percentAdded,
  percentLost,
  picksPerCentimetre,
  picksPerInch,
  pounds,
  yards,
} from "../../units/index.js";
import type { PicksPerLength } from "../../units/index.js";
import { lengthOfPicks } from "./length-of-picks.js";
import { picksAtLoom } from "./picks-at-loom.js";
import { picksFinished } from "./picks-finished.js";
import { picksFromGlass } from "./picks-from-glass.js";
import { picksInLength } from "./picks-in-length.js";
import { weftMassDirect } from "./weft-mass-direct.js";
import { weftMass } from "./weft-mass.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

const at = (page: number, disposition: number): string => `p. ${String(page)}, disposition ${String(disposition)}`;

describe("mass of silk weft, drams to 1000 yards, 8 % of waste", () => {
  type Row = readonly [string, Citation, yards: number, picks: number, width: string, dram: string];
  const rows: readonly Row[] = [
    [
      "taffeta, 102 picks of two threads",
      published(
        wolfensberger1921,
        at(77, 1),
        "2.73",
        "863379/320000",
        "misprint: the fraction as displayed comes to 2.698; no one figure changed gives 2.73",
      ),
      ...([100, 204, "19", "1.65"] as const),
    ],
    ["satin duchesse", published(wolfensberger1921, at(85, 3), "21.414", "34263/1600"), 300, 80, "47", "4.5"],
    [
      "armure, 104 picks of two threads",
      published(wolfensberger1921, at(89, 4), "3.03", "2422953/800000"),
      60,
      208,
      "19.5",
      "2.95",
    ],
    ["pekin stripe", published(wolfensberger1921, at(99, 6), "3.57", "35721/10000"), 100, 144, "21", "2.8"],
  ];
  for (const [title, citation, length, picks, width, dram] of rows) {
    const cloth = { wovenLength: yards(length), picks: picksPerInch(picks), widthInReed: inches(width) };
    cited(title, citation, weftMassDirect, [{ ...cloth, count: dramSilk(dram), allowance: percentAdded(8) }], pounds);
  }
});

describe("mass of cotton weft", () => {
  type Row = readonly [string, Citation, yards: number, PicksPerLength, width: string, count: number, percent: number];
  const rows: readonly Row[] = [
    [
      "120/2 in surah, 10 % of waste",
      published(wolfensberger1921, at(81, 2), "3.14", "22/7"),
      50,
      picksPerInch(120),
      "24",
      60,
      10,
    ],
    [
      "36 yards of 64 picks, 36s",
      published(brooks1892, "ch. IX, weight of a piece", "2 lb 13 3/4 oz", "20/7"),
      ...([36, picksPerInch(64), "37.5", 36, 0] as const),
    ],
    [
      "36 yards of 2300 picks to the yard, 36s",
      published(brooks1892, "p. 96 of the copy", "2.85", "2875/1008"),
      ...([36, picksFromGlass({ counted: 11.5, glass: yards("0.005") }), "37.5", 36, 0] as const),
    ],
    [
      "90 yards of 80 picks, 40s",
      published(taylor1909, "p. 312, ch. XII", "6 lb 6 6/7 oz", "45/7"),
      ...([90, picksPerInch(80), "30", 40, 0] as const),
    ],
    [
      "40 yards of 64 picks, 40s",
      published(clothQuantities, "example", "", "356/105"),
      ...([40, picksPerInch(64), "44.5", 40, 0] as const),
    ],
  ];
  for (const [title, citation, length, picks, width, count, percent] of rows) {
    const cloth = { wovenLength: yards(length), picks, widthInReed: inches(width) };
    cited(
      title,
      citation,
      weftMass,
      [{ ...cloth, count: cottonCount(count), allowance: percentAdded(percent) }],
      pounds,
    );
  }
  cited(
    "a hundred metres a metre wide, one pick to the inch of ones, by the mill's constant",
    published(fabricProduction2015, "formula list", "10000 ÷ 4301.14", "32399455/13935456"),
    weftMass,
    [
      {
        wovenLength: metres(100),
        picks: picksPerInch(1),
        widthInReed: centimetres(100),
        count: cottonCount(1),
        allowance: percentAdded(0),
      },
    ],
    kilograms,
  );

  it("is reckoned on the width in the reed, and grows with all of it", () => {
    const cloth = { wovenLength: yards(10), picks: picksPerInch(20), widthInReed: inches(20), count: cottonCount(4) };
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), (percent) => {
        const straight = weftMass({ ...cloth, allowance: percentAdded(0) }).in(pounds);
        const more = weftMass({ ...cloth, allowance: percentAdded(percent) }).in(pounds);
        expect(more).toBeCloseTo(straight * (1 + percent / 100), 12);
      }),
    );
    expect(() => weftMass({ ...cloth, allowance: percentLost(10) as never })).toThrow(/percentAdded/u);
  });
});

describe("picks", () => {
  cited(
    "in 220 cm at 8 to the centimetre",
    published(creativeThreadsWeft, "whole page", "1760", "1760"),
    picksInLength,
    [{ wovenLength: centimetres(220), picks: picksPerCentimetre(8) }],
  );
  cited("in 10 inches at 15.3 to the inch: the last goes past the length", worked("154"), picksInLength, [
    { wovenLength: inches("10.01"), picks: picksPerInch("15.3") },
  ]);
  cited(
    "634 of them at 20 to the inch",
    published(durhamWeaver, "11 June 2014", "about 32", "31.7"),
    lengthOfPicks,
    [{ picksInAll: 634, picks: picksPerInch(20) }],
    inches,
  );
  cited(
    "11 1/2 under a glass of the two-hundredth of a yard",
    published(brooks1892, "p. 96 of the copy", "2300 to the yard", "575/9"),
    picksFromGlass,
    [{ counted: 11.5, glass: yards("0.005") }],
    picksPerInch,
  );
  for (const [threads, exact] of [
    [19, "76"],
    [22, "88"],
  ] as const) {
    cited(
      `${String(threads)} to the quarter inch`,
      published(blanco1917, "p. 50, a mark of 19 x 22", `${String(threads)} to the quarter inch`, exact),
      picksFromGlass,
      [{ counted: threads, glass: inches("0.25") }],
      picksPerInch,
    );
  }
  cited(
    "18 at the loom in a cloth that loses a tenth",
    worked("20"),
    picksFinished,
    [{ picksAtLoom: picksPerInch(18), loomToFinished: percentLost(10) }],
    picksPerInch,
  );
  cited(
    "20 wanted in a cloth that loses a tenth",
    worked("18"),
    picksAtLoom,
    [{ picksFinished: picksPerInch(20), loomToFinished: percentLost(10) }],
    picksPerInch,
  );

  it("close up in finishing and open again on the way back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 0, max: 60 }), (picks, lost) => {
        const loomToFinished = percentLost(lost);
        const finished = picksFinished({ picksAtLoom: picksPerInch(picks), loomToFinished });
        expect(finished.in(picksPerInch)).toBeGreaterThanOrEqual(picks);
        expect(picksAtLoom({ picksFinished: finished, loomToFinished }).in(picksPerInch)).toBeCloseTo(picks, 12);
      }),
    );
  });

  it("weave the length they were counted for", () => {
    const picks = picksPerInch(18);
    expect(lengthOfPicks({ picksInAll: picksInLength({ wovenLength: inches(30), picks }), picks }).in(inches)).toBe(30);
    expect(() => lengthOfPicks({ picksInAll: 1.5, picks })).toThrow(QuantityError);
    expect(() => picksFromGlass({ counted: 0, glass: inches(1) })).toThrow(QuantityError);
  });
});
