import { describe, expect, it } from "vitest";
import { commonPractice } from "#ci/sources.js";
import { napkins } from "#ci/napkins.js";
import {
  contractedCount,
  endsForWidth,
  endsWithSelvedges,
  lengthOfPicks,
  lossFromMeasures,
  reedWidth,
  settByDiameter,
  warpLength,
  warpLengthByAdding,
  weftLength,
  widthInReedFromFinished,
  yarnCost,
  yarnForEnds,
} from "../handbook/index.js";
import {
  EndsPerLength,
  IndirectCount,
  Length,
  Mass,
  PicksPerLength,
  cottonCount,
  currency,
  endsPerInch,
  inches,
  percentAdded,
  percentLost,
  picksPerInch,
  pounds,
  yards,
  yardsPerPound,
} from "../units/index.js";
import type { Loss } from "../units/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { atLeastZero, calculation, loss, positive, whole } from "../engine/formula/index.js";
import type { Calculation } from "../engine/formula/index.js";
import { check } from "./index.js";

// A plan of six hall napkins, every figure of it an input of each question, as it lies before the one who reckons.
interface Plan {
  readonly pieces: number;
  readonly finishedWidth: Length;
  readonly finishedLength: Length;
  readonly hemEachEnd: Length;
  readonly widthLoss: Loss;
  readonly shrinkage: Loss;
  readonly takeUp: Loss;
  readonly loomWaste: Length;
  readonly sample: Length;
  readonly sett: EndsPerLength;
  readonly picks: PicksPerLength;
  readonly threadingRepeat: number;
  readonly count: IndirectCount;
  readonly plies: number;
}

const plan: Plan = {
  pieces: 6,
  finishedWidth: inches(18),
  finishedLength: inches(28),
  hemEachEnd: inches("1.25"),
  widthLoss: percentLost(14),
  shrinkage: percentLost(12),
  takeUp: percentLost(5),
  loomWaste: inches(30),
  sample: inches(10),
  sett: endsPerInch(20),
  picks: picksPerInch(20),
  threadingRepeat: 4,
  count: cottonCount(8),
  plies: 2,
};

const inputs = {
  pieces: whole("napkins", "cut from the one warp", { atLeast: 1 }),
  finishedWidth: positive(Length, "washed and hemmed"),
  finishedLength: positive(Length, "washed and hemmed"),
  hemEachEnd: atLeastZero(Length, "turned under"),
  widthLoss: loss("of the width, from reed to finished"),
  shrinkage: loss("of the cloth, from loom to finished"),
  takeUp: loss("of the thread"),
  loomWaste: atLeastZero(Length, "not woven"),
  sample: atLeastZero(Length, "woven to try the beat"),
  sett: positive(EndsPerLength, "in the reed"),
  picks: positive(PicksPerLength, "at the loom"),
  threadingRepeat: whole("ends in one threading repeat", "taken whole", { atLeast: 1 }),
  count: positive(IndirectCount, "of the single thread"),
  plies: whole("plies", "twisted together", { atLeast: 1 }),
};

const WARP = `
  cutLength     = finishedLength + 2 × hemEachEnd
  onLoom        = pieces × cutLength ÷ (1 − shrinkage)
  threadInCloth = onLoom ÷ (1 − takeUp)
  warp          = threadInCloth + loomWaste + sample`;
const ENDS = `
  widthInReed   = finishedWidth ÷ (1 − widthLoss)
  repeats       = roundUp(widthInReed × sett ÷ threadingRepeat)
  ends          = repeats × threadingRepeat`;
const YARN = `${WARP}${ENDS}
  yarn          = ends × warp`;

const length = positive(Length, "of yarn or warp");
const pairs = [
  { says: "counts pairs as ends", instead: "ends = repeats × threadingRepeat ÷ 2" },
  { says: "counts each end of a pair again", instead: "ends = repeats × threadingRepeat × 2" },
];
const base = { inputs, source: commonPractice };
const warp = calculation<Plan, Length>(() => ({ ...base, name: "warp", formula: WARP, result: length }));
const ends = calculation<Plan, number>(() => ({
  ...base,
  name: "ends",
  formula: ENDS,
  slips: pairs,
  result: whole("ends", "in the reed", { atLeast: 1 }),
}));
const weight = calculation<Plan, Mass>(() => ({
  ...base,
  name: "weight",
  result: positive(Mass, "of the warp"),
  formula: `${YARN}
  weight        = yarn ÷ (count ÷ plies)`,
}));
const weft = calculation<Plan, Length>(() => ({
  ...base,
  name: "weft",
  result: length,
  formula: `${YARN}
  width         = ends ÷ sett
  weft          = onLoom × picks × width`,
}));
const width = calculation<Plan, Length>(() => ({
  ...base,
  name: "width",
  result: length,
  formula: `${ENDS}\n  width = ends ÷ sett`,
}));

/** Nothing is named: a plain slip of arithmetic gives the number as well. */
const SILENT = /^$/u;

type Question = Calculation<Plan, Length | Mass | number>;

function named(question: Question, written: string, unit: Unit<string> | null): string {
  const { value, slips } = check(question as never, plan as never, { written, unit: unit });
  return value === "wrong" ? slips.map(({ says }) => says).join("\n") : value;
}

// Each number is the plan with one slip, worked outside this library: for example 6 × 30.5 ÷ 0.88 ÷ 0.95 + 40 = 258.8995 in.
const slips: readonly (readonly [number, string, Question, string, Unit<string> | null, RegExp])[] = [
  [3, "the shrinkage forgotten", warp, "6.462", yards, /leaves the 12 % of shrinkage out/u],
  [4, "both percentages added", warp, "7.089", yards, /adds each of the 12 % of shrinkage/u],
  [5, "the percentages summed, then added", warp, "7.059", yards, /together and adds them once/u],
  [6, "the take-up forgotten", warp, "6.888", yards, /leaves the 5 % of take-up out/u],
  [7, "the loom waste forgotten", warp, "6.358", yards, /leaves out loom waste/u],
  [8, "the sample forgotten", warp, "6.914", yards, /leaves out sample/u],
  [9, "the loom waste once for every napkin", warp, "11.358", yards, /counts loom waste once for each of the pieces/u],
  [10, "one hem for two", warp, "6.942", yards, /counts hem each end once/u],
  [11, "the hems put on after both losses", warp, "7.110", yards, /in on finished length only|only after/u],
  [12, "the hems forgotten", warp, "6.693", yards, /leaves out hem each end/u],
  [13, "one napkin too few", warp, "6.178", yards, /one too few of the pieces/u],
  [14, "feet called yards", warp, "21.575", yards, /reckons in ft and calls them yd/u],
  [15, "metres called yards", warp, "6.576", yards, /reckons in m and calls them yd/u],
  [16, "yards taken for metres and converted", warp, "7.865", yards, /takes yd for m and converts/u],
  [17, "the finished width taken as the width in the reed", ends, "360", null, /leaves the 14 % of width loss out/u],
  [18, "the width loss added", ends, "412", null, /adds the 14 % of width loss/u],
  [
    19,
    "width and length exchanged",
    ends,
    "652",
    null,
    /exchanges finished width and finished length|finished length where/u,
  ],
  [20, "pairs counted as ends", ends, "210", null, /counts pairs as ends/u],
  [21, "ends doubled", ends, "840", null, /counts each end of a pair again/u],
  [22, "the ply ignored", weight, "0.4495", pounds, /leaves out plies/u],
  [23, "the ply divided twice", weight, "1.7979", pounds, /multiplies twice by plies/u],
  [24, "count and ply exchanged", weight, "14.383", pounds, /reckons in oz/u],
  [25, "the linen lea for the cotton hank", weight, "2.517", pounds, /takes 300 for the 840/u],
  [26, "the worsted hank for the cotton hank", weight, "1.348", pounds, /takes 560 for the 840/u],
  [29, "weft over the whole warp", weft, "3020.5", yards, /stops at yarn/u],
  [30, "weft taken equal to warp", weft, "3020.5", yards, /stops at yarn/u],
  [31, "weft on the finished width", weft, "2079.5", yards, /leaves the 14 % of width loss out/u],
  [32, "a sett of 18 for 20", width, "23.33", inches, SILENT],
  [33, "the other losses taken off the width too", ends, "476", null, SILENT],
  [34, "the length rounded down to the half yard", warp, "7.0", yards, SILENT],
];

describe("of thirty slips in one plan", () => {
  it("twenty-seven are named, the others given no wrong name", () => {
    expect(slips.filter(([, , , , , says]) => says !== SILENT)).toHaveLength(27);
  });

  it.each(slips)("slip %i, %s, is named, or nothing is", (_number, _what, question, written, unit, says) => {
    expect(slips).toHaveLength(30);
    expect(named(question, written, unit)).toMatch(says);
  });

  it.each([
    [warp, "7.191653", yards],
    [ends, "420", null],
    [weight, "0.898957", pounds],
    [weft, "2426.136364", yards],
  ] as const)("the right answer is never accused", (question, written, unit) => {
    expect(named(question as Question, written, unit)).toBe("right");
  });
});

const adding = {
  pieces: 2,
  finishedLength: inches(36),
  hemEachEnd: inches(2),
  shrinkage: percentAdded(15),
  takeUp: percentAdded(0),
  loomWaste: inches(36),
};
const dollars = currency("USD");
const across = (sett: number, width: string): object => ({
  sett: endsPerInch(sett),
  widthInReed: inches(width),
  threadingRepeat: 1,
  balanceEnds: 0,
});

// The slips of weavers that are sums; the others are of measuring, counting and reading. Each number by hand, as beside it.
const practice: readonly (readonly [string, unknown, unknown, string, Unit<string> | null, RegExp])[] = [
  ["adds the shrinkage", warpLength, napkins, "6.94", yards, /adds the 10 %/u], // 184 × 1.1 ÷ 0.92 + 30 = 250
  ["adds the percentages to one another", warpLength, napkins, "6.864", yards, /together and adds them once/u], // 184 × 1.18 + 30
  [
    "takes the loss from the shorter measure",
    lossFromMeasures,
    { before: inches(10), after: inches(8) },
    "25",
    percentLost,
    SILENT,
  ], // 2 ÷ 8
  ["leaves the take-up out", warpLength, napkins, "6.51", yards, /leaves the 8 % of take-up out/u], // 204.444 + 30
  ["doubles the waste with the pieces", warpLength, napkins, "7.84", yards, SILENT], // 222.222 + 60
  ["leaves the hems out", warpLength, napkins, "6.469", yards, /leaves out hem each end/u], // 168 ÷ 0.828 + 30
  [
    "takes the finished width for that in the reed",
    widthInReedFromFinished,
    { finishedWidth: inches(18), reedToFinished: percentLost(14) },
    "18.0",
    inches,
    /leaves the 14 %|gives finished width/u,
  ],
  ["exchanges width and length", ends, plan, "652", null, /exchanges finished width/u], // 28 ÷ 0.86 × 20 = 651.2
  ["leaves the sett of another draft", endsForWidth, across(20, "19.5"), "351", null, SILENT], // 18 × 19.5
  ["multiplies wrongly", endsForWidth, across(6, "21"), "72", null, /takes 12 for the 21 of width in reed/u], // 6 × 12
  [
    "lacks a factor",
    weftLength,
    { wovenLength: inches(70), picks: picksPerInch(8), widthInReed: inches(7) },
    "560",
    inches,
    /stops at picks in all/u,
  ], // 70 × 8
  ["rounds down", warpLengthByAdding, adding, "3.5", yards, /cut off, not rounded/u], // 128 in = 3.556 yd
  ["divides inches by twelve", warp, plan, "21.575", yards, /reckons in ft/u], // 258.8995 ÷ 12
  ["ignores the ply", weight, plan, "0.4495", pounds, /leaves out plies/u], // 3020.494 ÷ 6720
  ["takes the constant of linen", weight, plan, "2.517", pounds, /takes 300 for the 840/u], // 3020.494 ÷ 1200
  [
    "takes a percentage off a wrong number",
    contractedCount,
    { count: cottonCount(5), plies: 2, contraction: percentLost(5) },
    "2.714",
    cottonCount,
    SILENT,
  ], // 2280 ÷ 840
  ["counts pairs for ends", endsForWidth, across(20, "19.5"), "195", null, /counts half of|halves the answer/u], // 390 ÷ 2
  ["misreads its own repeat", yarnForEnds, { ends: 22, warpLength: yards(10) }, "120", yards, SILENT], // 12 × 10
  ["takes another reed", reedWidth, { ends: 868, sett: endsPerInch(36) }, "27.1", inches, SILENT], // 868 ÷ 32
  [
    "leaves the edge ends out",
    endsWithSelvedges,
    { bodyEnds: 480, endsEachSelvedge: 4, floatingEnds: 2 },
    "482",
    null,
    /leaves out ends each selvedge/u,
  ],
  [
    "counts the picks of another beat",
    lengthOfPicks,
    { picksInAll: 300, picks: picksPerInch(15) },
    "25.0",
    inches,
    SILENT,
  ], // 300 ÷ 12
  ["weaves one repeat too many", warpLength, napkins, "7.778", yards, /one too many of the pieces/u], // 207 ÷ 0.828 + 30 = 280
  ["takes the weft for equal to the warp", weft, plan, "3020.5", yards, /stops at yarn/u],
  [
    "halves the diameter with the count",
    settByDiameter,
    { constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 },
    "1512",
    endsPerInch,
    /forgets the square root/u,
  ], // 0.9 × 3360 ÷ 2
  [
    "takes the price of half a pound for that of a pound",
    yarnCost,
    { yarn: pounds(1.5), price: dollars(12), priceMass: pounds(0.5) },
    "18",
    dollars,
    /price mass/u,
  ], // 1.5 × 12
];

describe("of twenty-five sums that weavers get wrong", () => {
  it.each(practice)("one that %s is told", (_what, question, input, written, unit, says) => {
    expect(practice).toHaveLength(25);
    const { value, slips: found } = check(question as never, input as never, { written, unit });
    expect(value === "wrong" ? found.map((one) => one.says).join("\n") : value).toMatch(says);
  });

  it("eighteen are, the others are given no wrong name", () => {
    expect(practice.filter(([, , , , , says]) => says !== SILENT)).toHaveLength(18);
  });
});
