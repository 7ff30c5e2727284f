import fc from "fast-check";
import { expect, test } from "vitest";
import type { Sleyed, Threaded } from "../job/loom.js";
import type { WarpFault } from "../job/old-warp.js";
import type { Runs } from "../job/runs.js";
import { dentsByPlace, dentsByYarn } from "./dents.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import { shaftsOf } from "./shafts.js";
import { eachPlace } from "./stretch.js";
import { tableAfresh, tableTied } from "./table.js";

const EVEN = { before: 0, after: 0 };
const faults: readonly WarpFault[] = [
  { is: "empty heddle", after: 88, shaft: 2 },
  { is: "broken", after: 199 },
  { is: "on another shaft", end: 240, shaft: 1 },
  { is: "one too many", end: 306 },
];
const threading: Runs<Threaded> = [
  "floating",
  { ends: 2, shaft: 3 },
  { ends: 2, shaft: 4 },
  { repeat: "the rest", of: [1, 2, 3, 4] },
  { ends: 2, shaft: 1 },
  { ends: 2, shaft: 2 },
  "floating",
];
const sley: Runs<Sleyed> = [
  { dents: 1, at: 1 },
  { dents: 1, at: 4 },
  { repeat: "the rest", of: [2] },
  { dents: 1, at: 4 },
  { dents: 1, at: 1 },
];
const lived = tableTied({ threads: 370, faults }, EVEN);
const onEach = (shafts: readonly unknown[]): readonly number[] =>
  [1, 2, 3, 4, "floating"].map((shaft) => shafts.filter((one) => one === shaft).length);

test("a warp that has lived: 370 threads, one broken and one too many, meet 370 new ends", () => {
  const said = lived.stretches.map(({ standing, places, newEnd, oldEnd }) => [standing, places, newEnd, oldEnd]);
  expect(said).toEqual([
    ["joined", 88, 1, 1],
    ["empty heddle", 0, null, null],
    ["joined", 111, 89, 89],
    ["broken", 1, 200, null],
    ["joined", 106, 201, 200],
    ["one too many", 0, null, 306],
    ["joined", 64, 307, 307],
  ]);
  expect([lived.oldPlaces, lived.newEnds, lived.partners, lived.seconds]).toEqual([370, 370, 1, 0]);
});

test("a warp that has lived: the shafts lift 93, 92, 92 and 91 with two floating, and 92 each once the end is put right", () => {
  const { shafts, sharing } = shaftsOf(threading, lived, faults);
  expect(onEach(shafts)).toEqual([93, 92, 92, 91, 2]);
  expect([shafts[199], shafts[240], sharing]).toEqual([3, 1, [3, 5, 367, 369]]);
  const mended = faults.map((one) => (one.is === "on another shaft" ? { ...one, mend: true } : one));
  const right = shaftsOf(threading, lived, mended).shafts;
  expect([onEach(right), right[240]]).toEqual([[92, 92, 92, 92, 2], 4]);
});

test("a warp that has lived: 184 dents, the floating ends alone, the selvedges in fours", () => {
  const { dents, holds, wanted } = dentsByPlace(sley, lived);
  expect([dents.at(-1), dents[199], holds, wanted]).toEqual([184, 100, 370, 370]);
  expect(dents.slice(0, 8)).toEqual([1, 2, 2, 2, 2, 3, 3, 4]);
  expect(dentsByPlace([{ dents: 180, at: 2 }], lived)).toMatchObject({ holds: 360, wanted: 370 });
});

test("a wider runner: 24 ends after the last hang on six heddles of each shaft, in dents 121 to 132", () => {
  const wider = tableTied({ threads: 240, faults: [] }, { before: 0, after: 24 });
  expect(wider.stretches.map(({ standing, places, newEnd }) => [standing, places, newEnd])).toEqual([
    ["joined", 240, 1],
    ["added", 24, 241],
  ]);
  const { shafts } = shaftsOf([1, 2, 3, 4], wider, []);
  expect(onEach(shafts.slice(240))).toEqual([6, 6, 6, 6, 0]);
  const { dents } = dentsByPlace([2], wider);
  expect([dents[240], dents[263]]).toEqual([121, 132]);
  const both = tableTied({ threads: 240, faults: [] }, { before: 12, after: 12 });
  expect(both.stretches.map(({ newEnd, oldEnd }) => [newEnd, oldEnd])).toEqual([
    [1, null],
    [13, 1],
    [253, null],
  ]);
  expect(onEach(shaftsOf([1, 2, 3, 4], both, []).shafts.slice(0, 12))).toEqual([3, 3, 3, 3, 0]);
  expect(
    shaftsOf([1, 2, 3, 4, 3, 2], tableTied({ threads: 6, faults: [] }, { before: 2, after: 1 }), []).shafts,
  ).toEqual([3, 2, 1, 2, 3, 4, 3, 2, 1]);
  expect(dentsByPlace([1, 2], tableTied({ threads: 6, faults: [] }, { before: 2, after: 1 })).dents).toEqual([
    1, 1, 2, 3, 3, 4, 5, 5, 6,
  ]);
});

test("dropped at the sides: the outermost old ends are cut back", () => {
  const narrower = tableTied({ threads: 20, faults: [] }, { before: -4, after: -8 });
  expect(narrower.stretches.map(({ standing, places, newEnd, oldEnd }) => [standing, places, newEnd, oldEnd])).toEqual([
    ["dropped", 4, null, 1],
    ["joined", 8, 1, 5],
    ["dropped", 8, null, 13],
  ]);
  expect(shaftsOf([1, 2, 3], narrower, []).shafts).toEqual([2, 3, 1, 2, 3, 1, 2, 3]);
  expect(dentsByPlace([3], narrower).dents).toEqual([1, 1, 2, 2, 2, 3, 3, 3]);
  expect(dentsByPlace([{ dents: 2, at: 4 }], narrower).dents).toEqual([1, 1, 1, 1, 2, 2, 2, 2]);
});

test("an end left out makes a bare threading jump, and a mended one fills the gap in the dent of the end before", () => {
  const out = (mend: boolean): readonly WarpFault[] => [{ is: "left out", after: 2, mend }];
  const jumps = tableTied({ threads: 6, faults: out(false) }, EVEN);
  expect([jumps.newEnds, shaftsOf([1, 2, 3, 4], jumps, []).shafts]).toEqual([6, [1, 2, 4, 1, 2, 3]]);
  const mended = tableTied({ threads: 6, faults: out(true) }, EVEN);
  expect([mended.newEnds, shaftsOf([1, 2, 3, 4], mended, []).shafts]).toEqual([7, [1, 2, 3, 4, 1, 2, 3]]);
  expect(dentsByPlace([2], mended).dents).toEqual([1, 1, 1, 2, 2, 3, 3]);
  expect(dentsByPlace([{ dents: 3, at: 2 }], mended).dents).toEqual([1, 1, 1, 2, 2, 3, 3]);
  const first = tableTied({ threads: 2, faults: [{ is: "left out", after: 0, mend: true, shaft: 4 }] }, EVEN);
  expect([shaftsOf(["floating", 1], first, []).shafts, dentsByPlace([1], first).dents]).toEqual([
    [4, "floating", 1],
    [1, 1, 2],
  ]);
});

test("a broken place left empty keeps its heddle and its part of the dent", () => {
  const table = tableTied({ threads: 5, faults: [{ is: "broken", after: 2, mend: false }] }, EVEN);
  expect([table.oldPlaces, table.newEnds]).toEqual([6, 5]);
  expect(shaftsOf([1, 2, 3, 4], table, []).shafts).toEqual([1, 2, 4, 1, 2]);
  expect(dentsByPlace([2], table).dents).toEqual([1, 1, 2, 3, 3]);
  const pair: Runs<Threaded> = [1, 2, { ends: 2, shaft: 3 }, 4, 1];
  expect(shaftsOf(pair, table, [])).toMatchObject({ shafts: [1, 2, 3, 4, 1], sharing: [] });
  expect(shaftsOf(pair, tableTied({ threads: 6, faults: [] }, EVEN), []).sharing).toEqual([4]);
});

test("heddles that hold another number of ends: a second new end on one knot, the later old end cut back", () => {
  const pairs = [
    { oldPlace: 1, more: 1 },
    { oldPlace: 4, more: -1 },
  ];
  const table = tableTied({ threads: 5, faults: [] }, EVEN, pairs);
  expect(table.stretches.map(({ standing, places, newEnd, oldEnd }) => [standing, places, newEnd, oldEnd])).toEqual([
    ["joined", 1, 1, 1],
    ["second on one knot", 1, 2, 1],
    ["joined", 2, 3, 2],
    ["cut back", 1, null, 4],
    ["joined", 1, 5, 5],
  ]);
  expect([table.newEnds, table.seconds]).toEqual([5, 1]);
  expect(shaftsOf([1, 2, { ends: 2, shaft: 3 }, 4], table, [])).toMatchObject({
    shafts: [1, 1, 2, 3, 4],
    sharing: [2],
    repeat: 0,
  });
  expect(dentsByPlace([{ dents: 5, at: 1 }], table).dents).toEqual([1, 1, 2, 3, 5]);
});

test("a crammed stripe by yarn: 128 dents, every stripe beginning one", () => {
  const stripes = laid(
    [
      { ends: 32, yarns: ["white"] },
      {
        repeat: 4,
        of: [
          { ends: 36, yarns: ["blue"] },
          { ends: 32, yarns: ["white"] },
        ],
      },
    ],
    STRIPES,
  ).runs;
  const { dents } = dentsByYarn({ blue: 3, others: 2 }, stripes);
  expect([dents.length, dents.at(-1), dents[32], dents[33], dents[35]]).toEqual([304, 128, 17, 17, 18]);
  expect(dentsByYarn({ blue: 3 }, stripes).dents[0]).toBe(null);
});

test("empty dents count inside the width, not outside it; another dent is counted from that of old end 1", () => {
  const table = tableTied({ threads: 6, faults: [] }, EVEN);
  const spaced: Runs<Sleyed> = [{ empty: 3 }, { dents: 1, at: 3 }, { empty: 2 }, { ends: 3, at: 2 }, { empty: 5 }];
  expect(dentsByPlace(spaced, table)).toEqual({ dents: [1, 1, 1, 4, 4, 5], holds: 6, wanted: 6, notFull: [8] });
  const moved = dentsByPlace([2], table, [{ is: "in another dent", end: 2, dent: 2 }]);
  expect(moved.dents).toEqual([1, 2, 2, 2, 3, 3]);
  expect(shaftsOf([1, 2], tableAfresh(3), []).shafts).toEqual([1, 2, 1]);
  expect(dentsByPlace([2], tableAfresh(3)).dents).toEqual([1, 1, 2]);
});

const aFault: fc.Arbitrary<WarpFault> = fc.oneof(
  fc.record({
    is: fc.constant("broken" as const),
    after: fc.nat(30),
    ends: fc.integer({ min: 1, max: 3 }),
    mend: fc.boolean(),
  }),
  fc.record({ is: fc.constant("left out" as const), after: fc.nat(30), mend: fc.boolean() }),
  fc.record({ is: fc.constant("one too many" as const), end: fc.integer({ min: 2, max: 30 }) }),
  fc.record({ is: fc.constant("empty heddle" as const), after: fc.nat(30), shaft: fc.constant(1) }),
);

test("old thread t meets new end t, more by places without an old end, less by threads cut back, and by the sides", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(aFault, { selector: (fault) => ("end" in fault ? fault.end : fault), maxLength: 8 }),
      fc.integer({ min: -3, max: 3 }),
      (found, before) => {
        const table = tableTied({ threads: 30, faults: found }, { before: Math.max(0, before), after: 0 });
        const broken = found.reduce((sum, one) => sum + (one.is === "broken" ? (one.ends ?? 1) : 0), 0);
        const tooMany = found.filter(({ is }) => is === "one too many").length;
        const empty = found.reduce(
          (sum, one) => sum + (one.is === "broken" && !(one.mend ?? true) ? (one.ends ?? 1) : 0),
          0,
        );
        const mended = found.filter((one) => one.is === "left out" && one.mend === true).length;
        expect(table.oldPlaces).toBe(30 + broken - tooMany);
        expect(table.newEnds).toBe(table.oldPlaces - empty + mended + Math.max(0, before));
        const met: (number | null)[] = [];
        eachPlace(table.stretches, ({ standing, oldEnd, newEnd }) => {
          if (standing === "joined" && oldEnd !== null) met[oldEnd] = newEnd;
        });
        for (let thread = 1; thread <= 30; thread += 1) {
          if (found.some((one) => one.is === "one too many" && one.end === thread)) continue;
          let meets = thread + Math.max(0, before);
          for (const one of found) {
            if (one.is === "broken" && one.after < thread && one.mend !== false) meets += one.ends ?? 1;
            if (one.is === "left out" && one.after < thread && one.mend === true) meets += 1;
            if (one.is === "one too many" && one.end < thread) meets -= 1;
          }
          expect(met[thread]).toBe(meets);
        }
      },
    ),
    { numRuns: 100 },
  );
});
