import fc from "fast-check";
import { expect, test } from "vitest";
import type { Threaded } from "../job/loom.js";
import type { WarpFault } from "../job/old-warp.js";
import type { Runs } from "../job/runs.js";
import { dentsByPlace } from "./dents.js";
import { againstCount, againstFoundShafts, againstRoom, againstSley, againstThreading } from "./disagreements.js";
import { heddlesTogether } from "./heddles-together.js";
import { roomAtSides } from "./room-at-sides.js";
import { shaftsOf } from "./shafts.js";
import { NOTHING_ADDED, closingEnds, atSides, stepOf, timesOfRepeat } from "./sides.js";
import type { AtSides } from "./table.js";
import { tableTied } from "./table.js";

const straight: Runs<Threaded> = [1, 2, 3, 4];

test("half at each side in whole repeats and dents, the odd step after the last", () => {
  const step = stepOf(straight, { places: [2] });
  expect([step, stepOf([1, 2, 3], { places: [2] }), stepOf(straight, { byYarn: { others: 2 } })]).toEqual([4, 6, 4]);
  expect(atSides({ sides: { where: "both" }, more: 24, step })).toEqual({ before: 12, after: 12 });
  expect(atSides({ sides: { where: "both" }, more: 30, step })).toEqual({ before: 12, after: 18 });
  expect(atSides({ sides: { where: "both" }, more: -68, step })).toEqual({ before: -32, after: -36 });
  expect(atSides({ sides: { where: "both" }, more: 3, step })).toEqual({ before: 0, after: 3 });
  expect(atSides({ sides: { where: "after the last" }, more: 24, step })).toEqual({ before: 0, after: 24 });
  expect(atSides({ sides: { where: "before end 1" }, more: -4, step })).toEqual({ before: -4, after: 0 });
  expect([stepOf([1, { ends: 2, shaft: 2 }], null), atSides({ sides: { where: "both" }, more: 5, step: 1 })]).toEqual([
    1,
    { before: 2, after: 3 },
  ]);
  expect(atSides({ sides: { numbers: { before: 8, after: 4 } }, more: 12, step: 4 })).toEqual({ before: 8, after: 4 });
  expect(atSides({ sides: { numbers: { before: 8, after: 4 } }, more: 16, step: 4 })).toBe(null);
  expect([closingEnds(270, 4), closingEnds(264, 4)]).toEqual([
    [268, 272],
    [264, 264],
  ]);
  // Plum towels: 440 places in repeats of six.
  expect(timesOfRepeat(6, 440)).toEqual({ times: 73, open: 2 });
});

test("no step is left open at end 1, and both sides make the difference", () => {
  fc.assert(
    fc.property(fc.integer({ min: -200, max: 200 }), fc.integer({ min: 1, max: 30 }), (difference, step) => {
      const { before, after } = atSides({ sides: { where: "both" }, more: difference, step }) ?? {
        before: 0,
        after: 0,
      };
      expect([before + after, Math.abs(before % step)]).toEqual([difference, 0]);
      expect(Math.abs(after) - Math.abs(before)).toBeGreaterThanOrEqual(0);
      expect(Math.abs(after - before)).toBeLessThan(2 * step);
    }),
  );
});

const runner = (sides: AtSides) => {
  const table = tableTied({ threads: 240, faults: [] }, sides);
  const columns = { table, shafts: shaftsOf(straight, table, []), dents: dentsByPlace([2], table) };
  return roomAtSides(columns, {
    before: { dents: 30, heddles: [1, 1, 0, 0] },
    after: { dents: 30, heddles: [12, 12, 12, 12] },
  });
};

test("the wider runner fits after the last, and not at both sides", () => {
  const [before, after] = runner({ before: 0, after: 24 });
  expect([before?.ends, before?.isShort, after?.dents, after?.dentsLeft]).toEqual([0, false, 12, 18]);
  expect(after?.heddles.map(({ taken, left }) => [taken, left])).toEqual([
    [6, 6],
    [6, 6],
    [6, 6],
    [6, 6],
  ]);
  expect(againstRoom(runner({ before: 0, after: 24 }))).toEqual([]);
  expect(againstRoom(runner({ before: 12, after: 12 })).map(({ says }) => says)).toEqual([
    "Before end 1, heddles short: 2 on shaft 1, 2 on shaft 2, 3 on shaft 3 and 3 on shaft 4.",
  ]);
});

test("a threading that comes to other places than the count is told with every number", () => {
  const counted = { threads: 370, broken: 1, tooMany: 1, oldPlaces: 370 };
  expect(againstCount("threading", 370, counted)).toEqual([]);
  expect(againstCount("threading", 372, counted)[0]?.says).toBe(
    "The threading comes to 372 places, the count to 370 (370 threads + 1 broken − 1 too many). Count again; the joining list waits.",
  );
  expect(againstSley(368, 370, [12]).map(({ standing }) => standing)).toEqual(["must", "check"]);
  expect(againstSley(370, 370, [])).toEqual([]);
});

test("another threading of the cloth is told by place, the first six named", () => {
  const table = tableTied({ threads: 16, faults: [] }, NOTHING_ADDED);
  const [loom, cloth] = [shaftsOf(straight, table, []), shaftsOf([1, 2, 4, 3], table, [])];
  const [told] = againstThreading(loom, cloth);
  expect(told?.values["places"]).toEqual([3, 4, 7, 8, 11, 12, 15, 16]);
  expect(told?.says).toContain("at 8 places: 3 (on shaft 4, not 3), 4 (on shaft 3, not 4)");
  expect(told?.says).toContain("12 (on shaft 3, not 4) and 2 more.");
  expect(againstThreading(loom, loom)).toEqual([]);
});

test("a broken place found on a shaft the threading puts elsewhere: a count is off before it", () => {
  const told = (shaft: number) => {
    const faults: readonly WarpFault[] = [{ is: "broken", after: 5, shaft }];
    const table = tableTied({ threads: 10, faults }, NOTHING_ADDED);
    return againstFoundShafts(table, shaftsOf(straight, table, faults)).map(({ says }) => says);
  };
  expect(told(2)).toEqual([]);
  expect(told(3)).toEqual([
    "Place 6 is broken on shaft 3, but the threading puts it on shaft 2: a count is off before it.",
  ]);
});

test("threadings written whole are laid together heddle by heddle", () => {
  const loom: Runs<Threaded> = [1, { ends: 2, shaft: 2 }, 3, 4];
  const cloth: Runs<Threaded> = ["floating", { ends: 2, shaft: 1 }, 2, 3, 4, { ends: 2, shaft: 1 }];
  const given = { loom, cloth, oldPlaces: 5, newEnds: 8 };
  const pairs = [
    { oldPlace: 1, more: 1 },
    { oldPlace: 3, more: -1 },
  ];
  expect(heddlesTogether(given, { numbers: { before: 1, after: 2 } })).toEqual({
    sides: { before: 1, after: 2 },
    pairs,
  });
  expect(heddlesTogether(given, { where: "both" })).toEqual({ sides: { before: 1, after: 2 }, pairs });
  expect(heddlesTogether(given, { numbers: { before: 2, after: 1 } }).sides).toBe(null);
  expect(heddlesTogether(given, { where: "after the last" }).sides).toEqual({ before: 0, after: 3 });
  const fewer = { loom: cloth, cloth: loom, oldPlaces: 8, newEnds: 5 };
  expect(heddlesTogether(fewer, { where: "both" })).toEqual({
    sides: { before: -1, after: -2 },
    pairs: [
      { oldPlace: 3, more: -1 },
      { oldPlace: 4, more: 1 },
    ],
  });
});

test("places of threadings laid together come to the ends of the cloth", () => {
  const heddle: fc.Arbitrary<Threaded> = fc.oneof(
    fc.integer({ min: 1, max: 4 }),
    fc.record({ ends: fc.integer({ min: 2, max: 3 }), shaft: fc.integer({ min: 1, max: 4 }) }),
    fc.constant("floating" as const),
  );
  const whole = fc
    .array(heddle, { minLength: 1, maxLength: 8 })
    .map((list): Runs<Threaded> => [{ repeat: 1, of: list }]);
  const where = fc.constantFrom("both" as const, "before end 1" as const, "after the last" as const);
  fc.assert(
    fc.property(whole, whole, where, (loom, cloth, at) => {
      const ends = (list: Runs<Threaded>): number =>
        list.reduce(
          (sum: number, one) =>
            sum +
            (typeof one === "object" && "of" in one
              ? ends(one.of)
              : typeof one === "object" && "ends" in one
                ? one.ends
                : 1),
          0,
        );
      const given = { loom, cloth, oldPlaces: ends(loom), newEnds: ends(cloth) };
      const { sides, pairs } = heddlesTogether(given, { where: at });
      expect(sides).not.toBe(null);
      const table = tableTied({ threads: given.oldPlaces, faults: [] }, sides ?? NOTHING_ADDED, pairs);
      expect(table.newEnds).toBe(given.newEnds);
    }),
  );
});
