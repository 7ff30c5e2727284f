import fc from "fast-check";
import { expect, test } from "vitest";
import type { Threaded } from "../job/loom.js";
import type { WarpFault } from "../job/old-warp.js";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { dentsByPlace } from "./dents.js";
import { groupsOf } from "./groups.js";
import { groupsOnLoom } from "./groups-on-loom.js";
import { joiningRows, knotsOf } from "./joining-rows.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import { leaseOfOldWarp } from "./lease-of-old-warp.js";
import { oldColours } from "./old-colours.js";
import { partnersToMake } from "./partners.js";
import { shaftCheck } from "./shaft-check.js";
import { shaftsOf } from "./shafts.js";
import { NOTHING_ADDED } from "./sides.js";
import { specialEnds } from "./special-ends.js";
import type { AtSides } from "./table.js";
import { tableTied } from "./table.js";

const of = (ends: number, ...yarns: string[]): Stripe => ({ ends, yarns });
const NAPKINS: Runs<Stripe> = [
  of(24, "natural"),
  {
    mirror: [of(40, "madder"), { repeat: 3, of: [of(12, "natural"), of(6, "indigo")] }, of(66, "natural")],
    middle: "twice",
  },
  of(24, "natural"),
];
const FAULTS: readonly WarpFault[] = [
  { is: "empty heddle", after: 88, shaft: 2 },
  { is: "broken", after: 199 },
  { is: "on another shaft", end: 240, shaft: 1 },
  { is: "one too many", end: 306 },
];
const LIVED: Runs<Threaded> = [
  "floating",
  { ends: 2, shaft: 3 },
  { ends: 2, shaft: 4 },
  { repeat: "the rest", of: [1, 2, 3, 4] },
  { ends: 2, shaft: 1 },
  { ends: 2, shaft: 2 },
  "floating",
];

function planned(list: Runs<Stripe>, threads: number, faults: readonly WarpFault[], sides: AtSides, most: number) {
  const { runs } = laid(list, STRIPES);
  const table = tableTied({ threads, faults }, sides);
  const columns = { shafts: shaftsOf([1, 2, 3, 4], table, faults), dents: dentsByPlace([2], table) };
  const groups = groupsOnLoom(groupsOf(runs, most), table, specialEnds(table, faults), columns);
  return { runs, table, groups, ...columns };
}

test("370 knots on a warp that has lived, a thrum for the broken end among them", () => {
  const { groups } = planned([of(370, "flax")], 370, FAULTS, NOTHING_ADDED, 24);
  const knots = (partner: "hang a thrum" | "thread it itself") =>
    joiningRows(groups, "from end 1", partner).at(-1)?.knotsSoFar;
  expect([knots("hang a thrum"), knots("thread it itself")]).toEqual([370, 369]);
});

test("from the last end a stripe is done with its first group, held against its first dent and shaft", () => {
  const { groups } = planned(NAPKINS, 368, [], NOTHING_ADDED, 24);
  const rows = joiningRows(groups, "from the last end", null);
  expect(rows.slice(0, 3).map(({ turn, group, from, to, edge }) => [turn, group, from, to, edge?.end ?? null])).toEqual(
    [
      [1, 24, 368, 345, 345],
      [2, 23, 344, 329, null],
      [3, 22, 328, 305, 305],
    ],
  );
  expect(rows[0]?.edge).toEqual({ end: 345, dent: 173, shaft: 1, cutsDent: false, cutsRepeat: false });
  // Edge 118 is inside a repeat of four: seen from the other side it still is.
  expect(rows.find(({ group }) => group === 10)?.edge).toEqual({
    end: 119,
    dent: 60,
    shaft: 3,
    cutsDent: false,
    cutsRepeat: true,
  });
  expect(rows.at(-1)).toMatchObject({ group: 1, to: 1, edge: { end: 1, dent: 1 }, knotsSoFar: 368 });
});

test("one colour at a time: so many ends to pass over, those already tied among them", () => {
  const { groups } = planned(NAPKINS, 368, [], NOTHING_ADDED, 24);
  const rows = joiningRows(groups, "one colour at a time", null);
  const said = (yarn: string) =>
    rows.filter(({ yarns }) => yarns[0] === yarn).map(({ group, passOver, from }) => [group, passOver, from]);
  expect(said("madder")).toEqual([
    [2, 24, 25],
    [3, 0, 49],
    [22, 240, 305],
    [23, 0, 329],
  ]);
  expect(said("natural").slice(0, 3)).toEqual([
    [1, 0, 1],
    [4, 40, 65],
    [6, 6, 83],
  ]);
  expect(said("indigo")[0]).toEqual([5, 76, 77]);
  expect(rows.map(({ knotsSoFar }) => knotsSoFar).at(-1)).toBe(368);
});

test("every order ties every group once and comes to the same knots", () => {
  const orders = ["from end 1", "from the last end", "one colour at a time"] as const;
  const stripe = fc.record({ ends: fc.integer({ min: 1, max: 40 }), yarns: fc.constantFrom(["a"], ["b"], ["c"]) });
  fc.assert(
    fc.property(fc.array(stripe, { minLength: 1, maxLength: 7 }), fc.constantFrom(...orders), (list, order) => {
      const threads = list.reduce((sum, { ends }) => sum + ends, 0);
      const { groups, runs } = planned(list, threads, [], NOTHING_ADDED, 12);
      const rows = joiningRows(groups, order, null);
      expect(rows.map(({ group }) => group).sort((a, b) => a - b)).toEqual(groups.map(({ group }) => group));
      expect(rows.at(-1)?.knotsSoFar).toBe(threads);
      expect(rows.filter(({ edge }) => edge !== null).length).toBe(runs.length);
      let at = 0;
      let hand = "";
      for (const { yarns, passOver, from, to } of order === "one colour at a time" ? rows : []) {
        at = yarns[0] === hand ? at : 0;
        hand = yarns[0] ?? "";
        expect(from).toBe(at + passOver + 1);
        at = to;
      }
    }),
    { numRuns: 50 },
  );
});

test("partners are made first: where each is threaded and sleyed", () => {
  const { table, shafts, dents } = planned([of(264, "slate")], 240, [], { before: 0, after: 24 }, 24);
  const [added] = partnersToMake(table, shafts, dents);
  expect(added).toMatchObject({ is: "added", firstEnd: 241, lastEnd: 264, heddle: "a spare one" });
  expect([added?.shafts.slice(0, 4), added?.dents[0], added?.dents.at(-1)]).toEqual([[1, 2, 3, 4], 121, 132]);
  const lived = tableTied({ threads: 370, faults: FAULTS }, NOTHING_ADDED);
  expect(partnersToMake(lived, shaftsOf(LIVED, lived, FAULTS), null)).toMatchObject([
    { is: "broken", firstEnd: 200, ends: 1, shafts: [3], dents: [null], heddle: "its own" },
  ]);
});

test("with each shaft rise the ends of each colour; of a blend each hand is checked, never one order", () => {
  const { runs } = laid(
    [of(20, "natural"), of(48, "plum", "pink"), of(9, "plum", "plum", "pink"), of(19, "natural")],
    STRIPES,
  );
  const table = tableTied({ threads: 96, faults: [] }, NOTHING_ADDED);
  const check = shaftCheck(runs, shaftsOf([1, 2, 3, 4, 3, 2], table, []));
  expect(check.rows.map(({ shaft, ends }) => [shaft, ends])).toEqual([
    [1, 16],
    [2, 32],
    [3, 32],
    [4, 16],
  ]);
  expect(
    check.rows.every(
      ({ ends, colours, blends }) => ends === [...colours, ...blends].reduce((sum, one) => sum + one.ends, 0),
    ),
  ).toBe(true);
  expect(check.hands.map(({ stripe, shafts, hands }) => [stripe, shafts, hands])).toEqual([
    [2, [3, 4], 8],
    [2, [3, 2], 8],
    [2, [1, 2], 8],
    [3, [3, 4, 3], 2],
    [3, [2, 1, 2], 1],
  ]);
  const inTurn = laid([{ ends: 8, yarns: ["plum", "pink"], order: "strictly in turn" as const }], STRIPES).runs;
  const even = tableTied({ threads: 8, faults: [] }, NOTHING_ADDED);
  expect(shaftCheck(inTurn, shaftsOf([1, 2], even, []))).toEqual({
    rows: [
      { shaft: 1, ends: 4, colours: [{ yarn: "plum", ends: 4 }], blends: [] },
      { shaft: 2, ends: 4, colours: [{ yarn: "pink", ends: 4 }], blends: [] },
    ],
    hands: [],
  });
});

test("two lifts keep the order of the old warp, but where an end is missing or hangs wrong", () => {
  expect(leaseOfOldWarp({ threads: 368, faults: [] }, [1, 2, 3, 4])).toEqual({
    lifts: [
      [1, 3],
      [2, 4],
    ],
    together: [],
    floating: [],
  });
  expect(leaseOfOldWarp({ threads: 370, faults: FAULTS }, LIVED)).toEqual({
    lifts: null,
    together: [
      [199, 200],
      // Old 240 hangs on shaft 1 between ends on shafts 3 and 1.
      [239, 240],
      [240, 241],
    ],
    floating: [1, 370],
  });
  expect(leaseOfOldWarp({ threads: 3, faults: [] }, [{ repeat: 1, of: [1, { ends: 2, shaft: 2 }] }]).lifts).toEqual([
    [1],
    [2],
  ]);
});

test("the old colours stand beside each group", () => {
  const { table, groups } = planned(
    [of(30, "slate")],
    20,
    [{ is: "broken", after: 4, mend: true }],
    { before: 9, after: 0 },
    15,
  );
  const old = laid([of(10, "green"), of(11, "white")], STRIPES).runs;
  expect(
    oldColours(groups, table, old).map((seen) => seen.map(({ yarns, ends, firstEnd }) => [yarns[0], ends, firstEnd])),
  ).toEqual([
    [["green", 6, 10]],
    [
      ["green", 4, 16],
      ["white", 11, 20],
    ],
  ]);
  const [first] = groups;
  expect(first && knotsOf(first, "thread it itself")).toBe(5);
});
