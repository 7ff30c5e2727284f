import fc from "fast-check";
import { expect, test } from "vitest";
import type { WarpFault } from "../job/old-warp.js";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { dentsByPlace } from "./dents.js";
import { groupsOf } from "./groups.js";
import { groupsOnLoom } from "./groups-on-loom.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import { shaftsOf } from "./shafts.js";
import { NOTHING_ADDED } from "./sides.js";
import { specialEnds } from "./special-ends.js";
import { tableTied } from "./table.js";

const of = (ends: number, ...yarns: string[]): Stripe => ({ ends, yarns });
const napkins: Runs<Stripe> = [
  of(24, "natural"),
  {
    mirror: [of(40, "madder"), { repeat: 3, of: [of(12, "natural"), of(6, "indigo")] }, of(66, "natural")],
    middle: "twice",
  },
  of(24, "natural"),
];
const lived: Runs<Stripe> = [of(64, "flax"), { repeat: 6, of: [of(22, "blue"), of(20, "flax")] }, of(54, "flax")];
const faults: readonly WarpFault[] = [
  { is: "empty heddle", after: 88, shaft: 2 },
  { is: "broken", after: 199 },
  { is: "on another shaft", end: 240, shaft: 1 },
  { is: "one too many", end: 306 },
];

test("the hall napkins are tied in 24 groups, as their progress file lists them", () => {
  const groups = groupsOf(laid(napkins, STRIPES).runs, 24);
  expect(groups.map(({ ends, yarns }) => `${String(ends)} ${yarns[0] ?? ""}`)).toEqual(
    [
      ["24 natural", "24 madder", "16 madder"],
      ["12 natural", "6 indigo", "12 natural", "6 indigo", "12 natural", "6 indigo"],
      ["24 natural", "24 natural", "24 natural", "24 natural", "24 natural", "12 natural"],
      ["6 indigo", "12 natural", "6 indigo", "12 natural", "6 indigo", "12 natural"],
      ["24 madder", "16 madder", "24 natural"],
    ].flat(),
  );
  expect(groups[8]).toMatchObject({ group: 9, firstEnd: 113, lastEnd: 118, endsStripe: true });
  expect(groups[14]).toMatchObject({ group: 15, lastEnd: 250 });
});

test("a blend's group is whole hands, one at least, and without a number a stripe is a group", () => {
  const { runs } = laid([of(30, "plum", "plum", "pink", "plum"), of(5, "oat")], STRIPES);
  const blend = groupsOf(runs.slice(0, 1), 11).map(({ ends }) => ends);
  expect(blend).toEqual([8, 8, 8, 6]);
  expect(groupsOf(runs.slice(0, 1), 2).map(({ ends }) => ends)).toEqual([4, 4, 4, 4, 4, 4, 4, 2]);
  expect(groupsOf(runs, null).map(({ ends }) => ends)).toEqual([30, 5]);
});

test("a group names its old ends, its shafts and dents, and what is special in it", () => {
  const { runs } = laid(lived, STRIPES);
  const table = tableTied({ threads: 370, faults }, NOTHING_ADDED);
  const columns = { shafts: shaftsOf([1, 2, 3, 4], table, faults), dents: dentsByPlace([2], table) };
  const special = specialEnds(table, faults);
  expect(special.map(({ is, newEnd, oldEnd, cutBack }) => [is, newEnd, oldEnd, cutBack])).toEqual([
    ["empty heddle", 89, null, 0],
    ["broken", 200, null, 0],
    ["on another shaft", 241, 240, 0],
    ["one too many", 306, 306, 1],
  ]);
  const groups = groupsOnLoom(groupsOf(runs, 24), table, special, columns);
  const holding = (end: number) => groups.find(({ firstEnd, lastEnd }) => firstEnd <= end && end <= lastEnd);
  // Blue 191 to 212: twenty-one old threads for twenty-two ends.
  expect(holding(200)).toMatchObject({
    firstEnd: 191,
    lastEnd: 212,
    firstOldEnd: 191,
    lastOldEnd: 211,
    oldThreads: 21,
  });
  expect(holding(306)).toMatchObject({ firstOldEnd: 297 - 1, oldThreads: (holding(306)?.ends ?? 0) + 1 });
  expect(holding(64)).toMatchObject({ lastShaft: 4, lastDent: 32, cutsDent: false, cutsRepeat: false });
  expect(holding(86)).toMatchObject({ lastEnd: 86, lastShaft: 2, cutsDent: false, cutsRepeat: true });
  expect(groups.flatMap((group) => group.special.map(({ is }) => is)).length).toBe(4);
  expect(groups.reduce((sum, { oldThreads }) => sum + oldThreads, 0)).toBe(370);
  const bare = groupsOnLoom(groupsOf(runs, 24), table, special, { shafts: null, dents: null });
  expect(bare[0]).toMatchObject({ firstShaft: "not known", lastDent: null });
  expect(structuredClone(groups)).toEqual(groups);
});

test("ends added at a side are told in each of its groups, ends dropped with the outermost", () => {
  const { runs } = laid([of(40, "slate")], STRIPES);
  const wider = tableTied({ threads: 30, faults: [] }, { before: 0, after: 10 });
  const none = { shafts: null, dents: null };
  const groups = groupsOnLoom(groupsOf(runs, 16), wider, specialEnds(wider, []), none);
  expect(groups.map(({ special }) => special.map(({ newEnd, ends }) => [newEnd, ends]))).toEqual([
    [],
    [[31, 2]],
    [[33, 8]],
  ]);
  const narrower = tableTied({ threads: 46, faults: [] }, { before: -2, after: -4 });
  const cut = groupsOnLoom(groupsOf(runs, 16), narrower, specialEnds(narrower, []), none);
  expect(cut.map(({ oldThreads }) => oldThreads)).toEqual([18, 16, 12]);
});

test("groups hold every end once, whatever the stripes", () => {
  const stripe = fc.record({ ends: fc.integer({ min: 1, max: 90 }), yarns: fc.constantFrom(["a"], ["b"], ["c"]) });
  fc.assert(
    fc.property(fc.array(stripe, { minLength: 1, maxLength: 9 }), fc.integer({ min: 1, max: 40 }), (list, most) => {
      const { runs, size } = laid(list, STRIPES);
      const groups = groupsOf(runs, most);
      expect(groups.map(({ firstEnd }) => firstEnd - 1)).toEqual([
        0,
        ...groups.slice(0, -1).map(({ lastEnd }) => lastEnd),
      ]);
      expect(groups.at(-1)?.lastEnd).toBe(size);
      expect(groups.filter(({ endsStripe }) => endsStripe).map(({ lastEnd }) => lastEnd)).toEqual(
        runs.map(({ lastEnd }) => lastEnd),
      );
      for (const { ends, endsStripe } of groups) expect(endsStripe ? ends <= most : ends === most).toBe(true);
    }),
  );
});
