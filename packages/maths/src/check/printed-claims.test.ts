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
  widthInReedFromFinished,
  yarnForEnds,
} from "../handbook/index.js";
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
  yardsPerPound,
} from "../units/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { check } from "./index.js";

const across = (sett: number, width: number): object => ({
  sett: endsPerInch(sett),
  widthInReed: inches(width),
  threadingRepeat: 1,
  balanceEnds: 0,
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
  allowance: percentAdded(0),
};
const counts = [20, 15, 12].map((one) => cottonCount(one));
const fiveTwo = { count: cottonCount(5), plies: 2, contraction: percentLost(5) };
const yardsOf = (ends: number, warpLength: object): readonly [unknown, unknown] => [yarnForEnds, { ends, warpLength }];
const twentieth = (width: number): object => ({ finishedWidth: inches(width), reedToFinished: percentLost(5) });

type Printed = readonly [
  where: string,
  question: unknown,
  input: unknown,
  prints: string,
  unit: Unit<string> | null,
  says: RegExp,
];

const fifty = { constant: 0.9, count: yardsPerPound(42000), ends: 2, intersections: 2 };

// What pages and books print, with the question they answer; the errata give author, title, year and place of each.
const named: readonly Printed[] = [
  ["Tygart Lake Fiber Arts, 6 by 21", endsForWidth, across(6, 21), "72", null, /takes 12 for the 21/u],
  ["My Textile Notes, 50s in plain weave", settByDiameter, fifty, "184", endsPerInch, /leaves out intersections/u],
];

// What is true of the number whatever was done: cut off, rounded, or within a rounding of a line.
const told: readonly Printed[] = [
  ["All Fiber Arts, warp for two", warpLengthByAdding, two, "3.5", yards, /cut off, not rounded/u],
  ["Osterkamp, 3 in that lose 5 %", widthInReedFromFinished, twentieth(3), "3.15", inches, /cut off, not rounded/u],
  [
    "Osterkamp, 5 in that lose 5 %",
    widthInReedFromFinished,
    twentieth(5),
    "5.25",
    inches,
    /right but for the last figure/u,
  ],
  ["Foulkes, 572 ends at 24", reedWidth, { ends: 572, sett: endsPerInch(24) }, "23.5", inches, /down to the half/u],
];

// Nothing bears a name out: a plain slip of arithmetic gives these as well, or no sum of the question does.
const silent: readonly Printed[] = [
  [
    "All Fiber Arts, 18 × 19.5 beside a sett of 20",
    endsForWidth,
    across(20, 19.5),
    "351",
    null,
    /small by about 10 %/u,
  ],
  [
    ...(["Durham Weaver, the far side", endsWithSelvedges] as const),
    ...([{ bodyEnds: 494, endsEachSelvedge: 0, floatingEnds: 4 }, "494", null, /third figure differs/u] as const),
  ],
  ["Mallikerta, 4 edge ends left out", warpMass, rug, "600", grams, /rounded (?:up|down) to the ten/u],
  ["an examination site, 20s, 15s and 12s", foldedCount, { counts }, "10", cottonCount, /times too large/u],
  ["Patrick, 414 ends of 204 in", ...yardsOf(414, inches(204)), "2320", yards, /small by about 1 %/u],
  ["The Fibre Garden, 1854 yd in metres", ...yardsOf(1, yards(1854)), "696", metres, /times too small/u],
  ["a rigid-heddle book, 160 yd in metres", ...yardsOf(1, yards(160)), "181", metres, /large by about/u],
  ["Pegotty, 22 in at 24", endsForWidth, across(24, 22), "180", null, /times too small/u],
  ["rugtalk, 5/2 less 5 %", contractedCount, fiveTwo, "2.714", cottonCount, /large by about/u],
];

describe("mistakes that were printed", () => {
  it.each(named)("%s: named", (_where, question, input, written, unit, says) => {
    const { slips } = check(question as never, input as never, { written, unit });
    expect(slips.map((one) => one.says).join("\n")).toMatch(says);
  });

  it.each(told)("%s: what is true of the number is told", (_where, question, input, written, unit, says) => {
    const verdict = check(question as never, input as never, { written, unit });
    expect(verdict.says.join(" ")).toMatch(says);
    expect(verdict.slips).toEqual([]);
  });

  it.each(silent)("%s: no name is given, but its size is", (_where, question, input, written, unit, says) => {
    const verdict = check(question as never, input as never, { written, unit });
    expect(verdict.slips).toEqual([]);
    expect(verdict.says.join(" ")).toMatch(says);
  });

  it("all stand on the page about them, each under what the check makes of it", () => {
    const page = readFileSync(new URL("../../../../docs/printed-mistakes.md", import.meta.url), "utf8");
    const [, ...sections] = page.split(/^## /gmu);
    const rowsOf = (section: string | undefined): readonly string[] =>
      [...(section ?? "").matchAll(/^\| (.+?) +\| (\S+) /gmu)].map(
        ([, where = "", prints = ""]) => `${where}: ${prints}`,
      );
    const rows = [named, told, silent].map((part) => part.map(([where, , , prints]) => `${where}: ${prints}`));
    expect(sections.map((section) => rowsOf(section).slice(2))).toEqual(rows);
  });
});
