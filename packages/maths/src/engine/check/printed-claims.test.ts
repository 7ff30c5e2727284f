import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  endsForWidth,
  endsWithSelvedges,
  foldedCount,
  contractedCount,
  reedWidth,
  settByDiameter,
  warpLengthByAdding,
  warpMass,
  widthInReed,
  yarnForEnds,
} from "../../handbook/index.js";
import {
  cottonCount,
  endsPerInch,
  grams,
  inches,
  metres,
  metricCount,
  percentAdded,
  percentLost,
  yards,
} from "../../units/index.js";
import type { Unit } from "../quantity/index.js";
import { check } from "./index.js";

const across = (sett: number, width: number): object => ({
  ...{ sett: endsPerInch(sett), widthInReed: inches(width), threadingRepeat: 1, balanceEnds: 0 },
});
const two = {
  pieces: 2,
  finishedLength: inches(36),
  hemEachEnd: inches(2),
  shrinkage: percentAdded(15),
  takeUp: percentAdded(0),
  loomWaste: inches(36),
};
const rug = {
  ends: 269,
  warpLength: metres("5.8"),
  count: metricCount("2.56"),
  waste: percentAdded(0),
};
const counts = [20, 15, 12].map((one) => cottonCount(one));
const fiveTwo = { count: cottonCount(5), plies: 2, contraction: percentLost(5) };
const yardsOf = (ends: number, warpLength: object): readonly [unknown, unknown] => [yarnForEnds, { ends, warpLength }];
const twentieth = (width: number): object => ({ finishedWidth: inches(width), reedToFinished: percentLost(5) });

type Unnamed = readonly [
  where: string,
  question: readonly [calculation: unknown, input: unknown],
  prints: string,
  unit: Unit<string> | null,
  why: string,
];
type Printed = readonly [
  where: string,
  question: unknown,
  input: unknown,
  prints: string,
  unit: Unit<string> | null,
  says: RegExp,
];

// What pages and books print, with the question they answer; the errata give author, title, year and place of each.
const named: readonly Printed[] = [
  ["All Fiber Arts, warp for two", warpLengthByAdding, two, "3.5", yards, /cut off/u],
  [
    "All Fiber Arts, 18 × 19.5 beside a sett of 20",
    endsForWidth,
    across(20, 19.5),
    "351",
    null,
    /takes 18 for the 20/u,
  ],
  ["Osterkamp, 3 in that lose 5 %", widthInReed, twentieth(3), "3.15", inches, /adds the 5 %/u],
  ["Osterkamp, 5 in that lose 5 %", widthInReed, twentieth(5), "5.25", inches, /adds the 5 %/u],
  ["Tygart Lake Fiber Arts, 6 by 21", endsForWidth, across(6, 21), "72", null, /takes 12 for the 21/u],
  [
    ...(["Durham Weaver, the far side", endsWithSelvedges] as const),
    ...([{ bodyEnds: 494, endsEachSelvedge: 0, floatingEnds: 4 }, "494", null, /leaves out floating ends/u] as const),
  ],
  ["Foulkes, 572 ends at 24", reedWidth, { ends: 572, sett: endsPerInch(24) }, "23.5", inches, /down to the half/u],
  [
    ...(["My Textile Notes, 50s in plain weave", settByDiameter] as const),
    ...([
      { constant: 0.9, yardsPerPound: 42000, ends: 2, intersections: 2 },
      "184",
      null,
      /leaves out|doubles/u,
    ] as const),
  ],
];

// Another slip than the true one gives the number, and is named: at two and three digits the check can be misled.
const otherwise: readonly (readonly [...Unnamed, says: RegExp])[] = [
  [
    ...(["Mallikerta, 4 edge ends left out", [warpMass, rug], "600", grams] as const),
    ...(["the edge ends are no figure of this question", /takes 2.6 for the 2.56/u] as const),
  ],
  [
    ...(["an examination site, 20s, 15s and 12s", [foldedCount, { counts }], "10", cottonCount] as const),
    ...(["doubled, but a misread unit rounds to it as well", /takes Ne for run/u] as const),
  ],
];

// No single slip gives these; what the reason is, as far as it can be seen.
const unnamed: readonly Unnamed[] = [
  [
    "Patrick, 414 ends of 204 in",
    yardsOf(414, inches(204)),
    "2320",
    yards,
    "rounded by eye: a warp of 5.604 yd would give it",
  ],
  [
    "The Fibre Garden, 1854 yd in metres",
    yardsOf(1, yards(1854)),
    "696",
    metres,
    "rounded up to 1696, then a digit dropped",
  ],
  [
    "a rigid-heddle book, 160 yd in metres",
    yardsOf(1, yards(160)),
    "181",
    metres,
    "146 was wanted; no sum of the question gives 181",
  ],
  [
    "Pegotty, 22 in at 24",
    [endsForWidth, across(24, 22)],
    "180",
    null,
    "528 was wanted; the number belongs to something else",
  ],
  [
    "rugtalk, 5/2 less 5 %",
    [contractedCount, fiveTwo],
    "2.714",
    cottonCount,
    "2,400 printed for 4,200 ÷ 2, and carried on",
  ],
];

describe("mistakes that were printed", () => {
  it.each(named)("%s: the slip is named", (_where, question, input, written, unit, says) => {
    const { value, slips } = check(question as never, input as never, { written, unit });
    expect([value, ...slips.map((one) => one.says)].join("\n")).toMatch(says);
  });

  it.each(unnamed)("%s: no single slip gives it, and none is invented", (_where, [question, input], written, unit) => {
    const { value, slips } = check(question as never, input as never, { written, unit });
    expect({ value, slips }).toEqual({ value: "wrong", slips: [] });
  });

  it.each(otherwise)(
    "%s: another slip is named than was made",
    (_where, [question, input], written, unit, _why, says) => {
      const { slips } = check(question as never, input as never, { written, unit });
      expect(slips.map((one) => one.says).join("\n")).toMatch(says);
    },
  );

  it("all stand on the page about them, each under what the check makes of it", () => {
    const page = readFileSync(new URL("../../../../../docs/printed-mistakes.md", import.meta.url), "utf8");
    const [, ...sections] = page.split(/^## /gmu);
    const rowsOf = (section: string | undefined): readonly string[] =>
      [...(section ?? "").matchAll(/^\| (.+?) +\| (\S+) /gmu)].map(
        ([, where = "", prints = ""]) => `${where}: ${prints}`,
      );
    const told = [
      named.map(([where, , , prints]) => `${where}: ${prints}`),
      ...[otherwise, unnamed].map((rows) => rows.map(([where, , prints]) => `${where}: ${prints}`)),
    ];
    expect(sections.map((section) => rowsOf(section).slice(2))).toEqual(told);
  });
});
