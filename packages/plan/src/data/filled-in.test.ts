// `thrum new` filled in by its remarks alone, for two warps; the numbers are worked by hand.
import { centimetres, grams, inches, metres } from "@thrum/maths";
import { expect, test } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { newJob } from "../job/new-job.js";
import { writtenValue } from "../job/written-value.js";
import type { WrittenValue } from "../job/written-value.js";
import { canBeWoven } from "./can-be-woven.js";
import { planOf } from "./plan-data.js";

const TOWELS = `thrum: 1
title: Plain towels
stripes:
  - 240 white
groups: 30
yarns:
  white: { count: 680 m per 100 g, sold: 250 g at 12 EUR, onHand: none }
loom:
  reed: 50 per 10 cm
  sley: 1
  threading: [1, 2, 3, 4]
  gapInDent: not measured
  room:
    before: { dents: 20, heddles: 5 }
    after: { dents: 20, heddles: 5 }
  endOneOn: left
oldWarp:
  ends: 240
  yarn: 680 m per 100 g
  left: { pastReed: 22 cm, behindHeddles: 40 cm }
join:
  knots: in front of the reed
  knot: weaver's
cloth:
  picks: 5 per cm
  takeUp: 6 % lost
  lengthLoomToFinished: 100 cm to 90 cm
  widthReedToFinished: 12 % lost
warp:
  wasteInFront: 25 cm
  wasteBehind: 45 cm
pieces:
  - number: 4
    name: towel
    finishedLength: 63 cm
    hemEachEnd: 4.5 cm
weft:
  stripes: white
  allowance: 5 % added
winding:
  threads: 2
  chains: by group
  most: 120 ends
`;

test("plain towels in centimetres", () => {
  const plan = planOf(jobIn(TOWELS));
  const { loom, piece, warp, yarn, tying, winding } = plan.figures;
  expect(canBeWoven(plan)).toBe(true);
  expect([loom.ends.value, loom.dents.value, tying.knots.value]).toEqual([240, 240, 240]);
  // 240 dents of 5 to the centimetre; × 0.88.
  expect(loom.widthInReed.value?.in(centimetres)).toBe(48);
  expect(loom.finishedWidth.value?.in(centimetres)).toBeCloseTo(42.24, 12);
  // (63 + 9) ÷ 0.9; 4 × 80 ÷ 0.94 + 25.
  expect(piece["1"]?.woven.value?.in(centimetres)).toBe(80);
  expect(warp.needed.value?.in(centimetres)).toBeCloseTo(17175 / 47, 10);
  // 240 × 17175/47 cm + 4 × 80 × 5 × 48 cm × 1.05 = 877.02 + 806.4 m, ÷ 6.8: 247.6 g of 250.
  expect(yarn["white"]?.inAll.value?.in(metres)).toBeCloseTo((240 * 17175) / 4700 + 806.4, 9);
  expect(yarn["white"]?.mass.value?.in(grams)).toBeCloseTo(247.562, 3);
  expect(yarn["white"]?.packages.value).toBe(1);
  // 8 groups of 30 in chains of 120 at most.
  expect(winding.chains.value?.chains.map(({ ends }) => ends)).toEqual([120, 120]);
});

/** The job to fill in, answered line by line: what stands before the remark is hers. */
function filledIn(answers: Readonly<Record<string, string>>): string {
  return newJob()
    .split("\n")
    .map((line) => {
      const [, key = "", rest = ""] = /^(\s*[\w.]+:) (.*)$/u.exec(line) ?? [];
      const answer = answers[key];
      const remark = rest.includes(" # ") ? rest.slice(rest.indexOf(" # ")) : "";
      return answer === undefined ? line : `${key} ${answer}${remark}`;
    })
    .join("\n");
}

test("napkins for a longer table, its remarks left standing", () => {
  // Twelve, 18 in long, hems of an inch; 12 to the inch, and no package on hand.
  const job = filledIn({
    "  reed:": "12 per inch",
    "    finishedLength:": "18 in",
    "    hemEachEnd:": "1 in",
    "  takeUp:": "21 in to 19 1/2 in",
    "  wasteInFront:": "9 in",
  }).replace("  - number: 9 ", "  - number: 12 ");
  const plan = planOf(jobIn(job));
  const { loom, piece, warp, tying } = plan.figures;
  expect(canBeWoven(plan)).toBe(true);
  expect([loom.ends.value, loom.dents.value, tying.knots.value]).toEqual([368, 184, 368]);
  // 184 ÷ 12 = 46/3 in; (18 + 2) ÷ 0.9 = 200/9 in; 12 × 200/9 × 14/13 + 9, as 3/2 of 21 are taken up: 1/14.
  expect(loom.widthInReed.value?.in(inches)).toBeCloseTo(46 / 3, 12);
  expect(piece["1"]?.woven.value?.in(inches)).toBeCloseTo(200 / 9, 12);
  expect(warp.needed.value?.in(inches)).toBeCloseTo(((12 * 200) / 9) * (14 / 13) + 9, 10);
});

/** How many values are written in a job. */
function valuesIn(value: WrittenValue | null): number {
  if (value === null) return 0;
  if (typeof value === "string") return 1;
  return Object.values(value).reduce((sum: number, one: WrittenValue) => sum + valuesIn(one), 0);
}

test("a first plan takes three lines, and the whole of the napkins sixty values at most", () => {
  const smallest =
    "stripes: [24 oat, { mirror: [40 rose, 8 oat, 12 slate], middle: once }, 24 oat]\nloom: { reed: 8 per inch, sley: 2 }\ngroups: 24\n";
  expect(smallest.trimEnd().split("\n")).toHaveLength(3);
  const { loom } = planOf(jobIn(smallest)).figures;
  // 48 + 2 × (40 + 8) + 12 = 156 ends in 78 dents: 39/4 in.
  expect([loom.ends.value, loom.dents.value, loom.widthInReed.value?.in(inches)]).toEqual([156, 78, 9.75]);
  const napkins = exampleText("2-hall-napkins");
  expect(valuesIn(writtenValue(napkins))).toBeLessThanOrEqual(60);
});
