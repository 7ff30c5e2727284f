import { centimetres, inches, percentLost, wovenLength } from "@thrum/maths";
import { expect, test } from "vitest";
import { tapeOf } from "./tape.js";
import type { WovenEntry } from "./tape.js";

const none = inches(0);
const cloth = (name: string, number: number, woven: WovenEntry["woven"], fringe = none): WovenEntry => ({
  name,
  title: name,
  kind: "cloth" as const,
  number,
  woven,
  hem: none,
  fringe,
});

test("nine napkins of 175/9 in end at 175 in, and each mark on a whole ninth", () => {
  const woven = wovenLength({
    finishedLength: inches(16),
    hemEachEnd: inches("0.75"),
    loomToFinished: percentLost(10),
  });
  const { marks, unmarked } = tapeOf([cloth("1", 9, woven)], none);
  expect([marks.length, unmarked, marks[8]?.to.in(inches)]).toEqual([9, 0, 175]);
  expect(marks[3]?.wovenFrom.in(inches)).toBe(175 / 3);
});

test("a header, then towels with four picks cut away between: every entry counts, and so does every break", () => {
  // Header 3, towels of 1653/52 in, breaks of 1/4 in; the last towel stops at 3 + n × (1653/52 + 1/4).
  const woven = wovenLength({
    finishedLength: inches(26),
    hemEachEnd: inches("1.25"),
    loomToFinished: percentLost("0"),
  });
  const header: WovenEntry = { ...cloth("1", 1, inches(3)), kind: "at the loom" };
  const { marks } = tapeOf([header, cloth("2", 15, woven)], inches("0.25"));
  expect(marks.map(({ entry, ofEntry, inRun }) => [entry, ofEntry, inRun]).slice(0, 3)).toEqual([
    ["1", 1, 1],
    ["2", 1, 2],
    ["2", 2, 3],
  ]);
  expect(marks[1]?.from.in(inches)).toBe(3.25);
  expect(marks[15]?.to.in(inches)).toBe(3 + 15 * (28.5 + 0.25));
});

test("fringes lie between two scarves twice, and not before the first pick", () => {
  const scarf = cloth("1", 3, centimetres(200), centimetres(12));
  const { marks } = tapeOf([scarf], none);
  expect(marks.map(({ from, to }) => [from.in(centimetres), to.in(centimetres)])).toEqual([
    [0, 200],
    [224, 424],
    [448, 648],
  ]);
  expect(marks[2]?.wovenTo.in(centimetres)).toBe(600);
  const { marks: mixed } = tapeOf([cloth("1", 1, centimetres(100)), scarf], centimetres(2));
  expect(mixed.map(({ from }) => from.in(centimetres))).toEqual([0, 114, 340, 566]);
});

test("more pieces than one tape takes are told by their number", () => {
  const { marks, unmarked } = tapeOf([cloth("1", 10_876, inches(36))], none);
  expect([marks.length, unmarked]).toEqual([500, 10_376]);
});
