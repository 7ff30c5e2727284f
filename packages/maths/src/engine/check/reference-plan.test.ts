import { describe, expect, it } from "vitest";
import { commonPractice } from "../../sources/index.js";
import {
  cottonCount,
  EndsPerLength,
  endsPerInch,
  IndirectCount,
  inches,
  Length,
  Mass,
  percentLost,
  PicksPerLength,
  picksPerInch,
  pounds,
  yards,
} from "../../units/index.js";
import type { Loss } from "../../units/index.js";
import type { Unit } from "../quantity/index.js";
import { atLeastZero, calculation, loss, positive, whole } from "../formula/index.js";
import type { Calculation } from "../formula/index.js";
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
  ...{ ...base, name: "ends", formula: ENDS, slips: pairs },
  result: whole("ends", "in the reed", { atLeast: 1 }),
}));
const weight = calculation<Plan, Mass>(() => ({
  ...{ ...base, name: "weight", result: positive(Mass, "of the warp") },
  formula: `${YARN}
  weight        = yarn ÷ (count ÷ plies)`,
}));
const weft = calculation<Plan, Length>(() => ({
  ...{ ...base, name: "weft", result: length },
  formula: `${YARN}
  width         = ends ÷ sett
  weft          = onLoom × picks × width`,
}));
const width = calculation<Plan, Length>(() => ({
  ...{ ...base, name: "width", result: length, formula: `${ENDS}\n  width = ends ÷ sett` },
}));

type Question = Calculation<Plan, Length | Mass | number>;

function named(question: Question, written: string, unit: Unit<string> | null): string {
  const { value, slips } = check(question as never, plan as never, { written, unit: unit });
  return value === "wrong" ? slips.map(({ says }) => says).join("\n") : value;
}

// Each number is the plan with one slip, worked outside this library: for example 6 × 30.5 ÷ 0.88 ÷ 0.95 + 40 = 258.8995 in.
const slips: readonly (readonly [number, string, Question, string, Unit<string> | null, RegExp])[] = [
  [3, "the shrinkage forgotten", warp, "6.462", yards, /leaves the 12 % of shrinkage out/u],
  [4, "both percentages added", warp, "7.089", yards, /adds each of shrinkage and take-up/u],
  [5, "the percentages summed, then added", warp, "7.059", yards, /together and adds them on/u],
  [6, "the take-up forgotten", warp, "6.888", yards, /leaves the 5 % of take-up out/u],
  [7, "the loom waste forgotten", warp, "6.358", yards, /leaves out loom waste/u],
  [8, "the sample forgotten", warp, "6.914", yards, /leaves out sample/u],
  [9, "the loom waste once for every napkin", warp, "11.358", yards, /counts loom waste once for each of the pieces/u],
  [10, "one hem for two", warp, "6.942", yards, /leaves out the factor 2/u],
  [11, "the hems put on after both losses", warp, "7.110", yards, /only after shrinkage and take-up/u],
  [12, "the hems forgotten", warp, "6.693", yards, /leaves out 2 × hem each end/u],
  [13, "one napkin too few", warp, "6.178", yards, /one too few of pieces/u],
  [14, "feet called yards", warp, "21.575", yards, /reckons in ft and calls them yd/u],
  [15, "metres called yards", warp, "6.576", yards, /reckons in m and calls them yd/u],
  [16, "yards taken for metres and converted", warp, "7.865", yards, /takes yd for m and converts/u],
  [17, "the finished width taken as the width in the reed", ends, "360", null, /leaves the 14 % of width loss out/u],
  [18, "the width loss added", ends, "412", null, /adds the 14 % of width loss/u],
  [19, "width and length exchanged", ends, "652", null, /finished length where finished width belongs/u],
  [20, "pairs counted as ends", ends, "210", null, /counts pairs as ends/u],
  [21, "ends doubled", ends, "840", null, /counts each end of a pair again/u],
  [22, "the ply ignored", weight, "0.4495", pounds, /leaves out dividing by plies/u],
  [23, "the ply divided twice", weight, "1.7979", pounds, /divides by plies twice/u],
  [24, "count and ply exchanged", weight, "14.383", pounds, /exchanges count and plies/u],
  [25, "the linen lea for the cotton hank", weight, "2.517", pounds, /takes the Ne of count for lea/u],
  [26, "the worsted hank for the cotton hank", weight, "1.348", pounds, /takes the Ne of count for worsted/u],
  [29, "weft over the whole warp", weft, "3020.5", yards, /uses warp where on loom belongs/u],
  [30, "weft taken equal to warp", weft, "3020.5", yards, /stops at yarn/u],
  [31, "weft on the finished width", weft, "2079.5", yards, /finished width where width/u],
  [32, "a sett of 18 for 20", width, "23.33", inches, /18/u],
  [33, "the other losses taken off the width too", ends, "476", null, /as well/u],
  [34, "the length rounded down to the half yard", warp, "7.0", yards, /half/u],
];

/** What is not recognised, and why. */
const UNNAMED: Readonly<Record<number, string>> = {
  32: "18 stands nowhere in the question: any number could be the wrong one",
  33: "a percentage from another line is used beside the right one: two changes of one line",
  34: "7.0 is no sum of the formula: the number was rounded afterwards, to a step that nobody named",
};

describe("of thirty slips in one plan", () => {
  it.each(slips)("slip %i, %s, is named or its reason known", (number, _what, question, written, unit, says) => {
    const found = named(question, written, unit);
    if (UNNAMED[number] === undefined) expect(found).toMatch(says);
    else expect(found).not.toMatch(says);
  });

  it("no more than three are left unnamed", () => {
    expect(slips).toHaveLength(30);
    expect(Object.keys(UNNAMED).length).toBeLessThanOrEqual(3);
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
