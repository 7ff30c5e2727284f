import { expect, test } from "vitest";
import { waysToAdd } from "./ways-to-add.js";

test("264 ends on 240 places fit after the last alone: the three ways side by side", () => {
  const ways = waysToAdd({
    oldWarp: { threads: 240, faults: [] },
    more: 24,
    step: 4,
    threading: [1, 2, 3, 4],
    sley: [2],
    room: { before: { dents: 30, heddles: [1, 1, 0, 0] }, after: { dents: 30, heddles: [12, 12, 12, 12] } },
  });
  expect(ways.map(({ where, sides, fits }) => [where, sides.before, sides.after, fits])).toEqual([
    ["both", 12, 12, false],
    ["before end 1", 24, 0, false],
    ["after the last", 0, 24, true],
  ]);
  expect(ways[1]?.taken[0]?.heddles.map(({ left }) => left)).toEqual([-5, -5, -6, -6]);
});

test("fewer ends are dropped and take no room; a room that is not told is not judged", () => {
  const given = { oldWarp: { threads: 20, faults: [] }, step: 4, threading: [1, 2, 3, 4], sley: null, room: {} };
  expect(waysToAdd({ ...given, more: -8 }).map(({ sides, fits }) => [sides.before, sides.after, fits])).toEqual([
    [-4, -4, true],
    [-8, 0, true],
    [0, -8, true],
  ]);
  const [both] = waysToAdd({ ...given, more: 8 });
  expect(both?.taken[0]).toMatchObject({ ends: 4, dents: null, dentsLeft: null, isShort: false });
});
