import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { brooks1892, clothQuantities, fabricProduction2015, taylor1909, wolfensberger1921 } from "#ci/sources.js";
import type { PicksPerLength } from "../../units/index.js";
import {
  centimetres,
  cottonCount,
  inches,
  kilograms,
  metres,
  percentAdded,
  percentLost,
  picksPerInch,
  pounds,
  yards,
} from "../../units/index.js";
import { picksFromGlass } from "./picks-from-glass.js";
import { weftMass } from "./weft-mass.js";

const at = (page: number, disposition: number): string => `p. ${String(page)}, disposition ${String(disposition)}`;

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
