import { expect, test } from "vitest";
import { workForward } from "../src/keep/bring-forward.js";
import { fileOf, furtherOn, readFile } from "../src/keep/file.js";
import { furthest, markOf, putMark } from "../src/keep/mark.js";
import { placed, placeText } from "../src/keep/place.js";
import type { JobRecord, WorkRecord } from "../src/keep/records.js";
import { loomViews } from "../src/reckon/loom-views.js";
import { acted, begun } from "../src/work/act.js";
import { minutesToGo } from "../src/work/pace.js";
import { isLate, whenText } from "../src/work/stopped.js";
import { tied } from "../src/work/tie.js";
import first from "./records/work-1.json" with { type: "json" };
import { loomOf } from "./loom-of.js";

const loom = loomOf("2-hall-napkins.yaml");
const fresh = begun("a", "a.yaml", loom);

function after(taps: number, from = fresh): WorkRecord {
  let work = from;
  for (let one = 0; one < taps; one += 1) {
    const change = tied(work.progress, work.here, loom.rows ?? [], "group", one);
    if (change !== null) work = acted(work, change, one);
  }
  return work;
}

function storage(): Storage {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  } as unknown as Storage;
}

test("of the record and the mark the one further on wins", () => {
  const here = storage();
  const [nine, ten] = [after(9), after(10)];
  const { seq, at, here: place, progress } = ten;
  expect(
    putMark("a", { seq, base: 9, at, here: place, lines: { tied: progress.tied, stopped: undefined } }, () => here),
  ).toBe(true);
  expect(here.getItem("thrum-mark:a")?.length).toBeLessThanOrEqual(400);
  const mark = markOf("a", () => here);
  expect(furthest(nine, mark, fresh)).toMatchObject({ seq: 10, progress: ten.progress });
  expect(furthest(after(11), mark, fresh).seq).toBe(11);
  expect(furthest(null, mark, fresh).progress.tied).toEqual([{ from: 1, to: 10 }]);
});

test("a device that refuses the mark, or holds another thing there, is no fault", () => {
  const refuses = (): Storage => {
    throw new Error("refused");
  };
  const mark = { seq: 1, base: 0, at: 0, here: fresh.here, lines: {} };
  expect([putMark("a", mark, refuses), markOf("a", refuses)]).toEqual([false, null]);
  const other = storage();
  other.setItem("thrum-mark:a", "[1, 2");
  expect(markOf("a", () => other)).toBeNull();
});

test("records of the first form are brought forward; a newer one is told, and is none", () => {
  expect(workForward(first)).toMatchObject({
    is: "here",
    record: { seq: 9, progress: { tied: [{ from: 1, to: 9 }] } },
  });
  expect(workForward({ ...first, schema: 99 })).toEqual({ is: "newer" });
  expect(workForward({ schema: 1, job: "a" })).toBeNull();
});

test("all jobs as a file: read back whole or not at all, and never over a newer count", () => {
  const job: JobRecord = {
    schema: 1,
    id: "a",
    title: "Napkins",
    changed: 1,
    saved: null,
    removed: null,
    text: "stripes: []",
    typed: {},
  };
  const text = fileOf([job], [after(9)]);
  expect(readFile(text)).toMatchObject({ jobs: [job], work: [{ seq: 9, past: [] }] });
  expect([readFile("{}"), readFile("no"), readFile(text.replace('"seq": 9', '"seq": "nine"'))]).toEqual([
    null,
    null,
    null,
  ]);
  expect(furtherOn([after(9)], [after(10)])).toEqual([]);
  expect(furtherOn([after(9)], [after(8)])).toHaveLength(1);
});

test("the place in the address leads back to the same place", () => {
  for (const work of [after(9), after(24)]) {
    const inTask: WorkRecord = { ...work, here: { ...work.here, task: "tie" } };
    expect(placed(fresh, placeText(inTask)).progress.tied).toEqual(work.progress.tied);
  }
  expect(placeText({ ...after(9), here: { ...fresh.here, task: "tie" } })).toBe("tie.9.0");
  for (const odd of [null, "", "tie.x", "tie.-1.0", "measures", "tie.999999.0"]) expect(placed(fresh, odd)).toBe(fresh);
});

test("progress as law 4l, opened on another device, stands at the same place", () => {
  const { progress } = after(9);
  expect(loomViews.progressIn(loomViews.progressFile(progress))).toEqual(progress);
  expect(loomViews.progressIn("tied: nonsense")).toBeNull();
});

test("her pace: 24 knots in 6 minutes, a pause of an hour left out, told in steps of 5 minutes", () => {
  const minute = 60_000;
  const times = [
    [0, 24],
    [6, 24],
    [12, 24],
    [72, 24],
    [78, 24],
  ].map(([at = 0, knots = 0]) => [at * minute, knots] as const);
  // 1/4 minute a knot: 250 knots are 62.5 minutes.
  expect(minutesToGo(times, 118, 250)).toBe(65);
  expect(minutesToGo(times, 49, 319)).toBeNull();
  expect(minutesToGo([], 118, 250)).toBeNull();
});

test("after ten minutes she looks at the loom first", () => {
  const at = Date.UTC(2026, 10, 29, 14, 32);
  const work = { ...after(9), at };
  expect([isLate(work, at + 10 * 60_000), isLate(work, at + 10 * 60_000 + 1), isLate(fresh, at)]).toEqual([
    false,
    true,
    false,
  ]);
  expect(whenText(at, at + 3_600_000, "en-GB")).toMatch(/^Sunday at \d\d:32$/u);
});
