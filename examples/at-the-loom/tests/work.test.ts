import { expect, test } from "vitest";
import type { Settings, WorkRecord } from "../src/keep/records.js";
import { acted, begun, undone } from "../src/work/act.js";
import { planChange, withNewPlan } from "../src/work/changed.js";
import { countedBoth, toCount } from "../src/work/count.js";
import type { Loom } from "../src/work/loom.js";
import { allTied, leftOver, miscountAt, tied, toTie } from "../src/work/tie.js";
import { windingNow, wound } from "../src/work/wind.js";
import { loomOf } from "./loom-of.js";

const napkins = loomOf("2-hall-napkins.yaml");
const rows = napkins.rows ?? [];

/** Taps, one after the other, as many as there are or as asked. */
function tying(loom: Loom, taps: number, tap: Settings["tap"] = "group"): WorkRecord {
  let work = begun("a", "a.yaml", loom);
  for (let one = 0; one < taps; one += 1) {
    const change = tied(work.progress, work.here, loom.rows ?? [], tap, one * 1000);
    if (change !== null) work = acted(work, change, one * 1000);
  }
  return work;
}

test("24 taps tie all groups, and 24 undos lead back to the first", () => {
  let work = tying(napkins, 24);
  expect([work.seq, work.progress.tied, allTied(work.progress, rows), toTie(work.progress, rows)]).toEqual([
    24,
    "all",
    368,
    null,
  ]);
  for (let one = 0; one < 24; one += 1) work = undone(work, 0) ?? work;
  expect([work.seq, toTie(work.progress, rows)?.group, allTied(work.progress, rows)]).toEqual([48, 1, 0]);
  expect(undone(work, 0)).toBeNull();
});

test("undo goes back 500 acts, each with only the lines that differ", () => {
  let work = begun("a", "a.yaml", napkins);
  for (let end = 1; end <= 600; end += 1) work = acted(work, { progress: { woven: end }, says: "" }, end);
  expect(work.past).toHaveLength(500);
  expect(work.past.at(-1)?.progress).toEqual({ woven: 599 });
  for (let one = 0; one < 500; one += 1) work = undone(work, 0) ?? work;
  expect([work.progress.woven, undone(work, 0)]).toEqual([100, null]);
});

test("where a tap is a knot, a full group takes no more until it is tied", () => {
  const full = tying(napkins, 24, "knot");
  expect([full.progress.stopped, full.progress.tied]).toEqual([{ group: 1, knot: 24 }, undefined]);
  const over = tying(napkins, 25, "knot");
  expect([over.progress.stopped, over.progress.tied]).toEqual([undefined, [{ from: 1, to: 1 }]]);
});

test("a job changed after 118 ends: the same groups say nothing, end 300 goes on, end 41 asks", () => {
  const { progress } = tying(napkins, 9);
  const groups = napkins.groups ?? [];
  const other = (end: number): Loom => ({
    ...napkins,
    groups: groups.map((one) => (one.firstEnd <= end && end <= one.lastEnd ? { ...one, yarns: ["plum"] } : one)),
  });
  expect(planChange(progress, napkins).is).toBe("same");
  expect(planChange(progress, other(300))).toMatchObject({ is: "goes on", end: 293 });
  // End 41 lies in group 2, whose first end is 25.
  expect(planChange(progress, other(41))).toMatchObject({ is: "asks", tied: 118, end: 25 });
  const after = acted(tying(napkins, 9), withNewPlan(other(300)), 0);
  expect(planChange(after.progress, other(300)).is).toBe("same");
  expect(allTied(after.progress, rows)).toBe(118);
});

test("1 old left at the edge of group 15: ends 119 to 250, groups 10 to 15; 23 counted in group 10 names it", () => {
  const { progress } = tying(napkins, 14);
  const seen = { old: 1, new: 0 };
  const found = miscountAt(progress, napkins, 15, seen);
  expect(found?.says).toBe(
    "1 old left, no new: a new end was passed over, or two new ends lie in one knot; else the chain is short. Look for a loose new end in ends 119 to 250.",
  );
  expect(found?.untie).toBe("All before end 119 agreed. Untie no more than groups 10 to 15.");
  const [group] = (napkins.groups ?? []).filter((one) => one.group === 10);
  if (group === undefined) throw new Error("no group 10");
  const work = acted(tying(napkins, 14), countedBoth(progress, group, { old: 24, new: 23 }), 0);
  expect(miscountAt(work.progress, napkins, 15, seen)?.odd).toMatchObject([{ group: 10, old: 0, new: -1 }]);
  const noted = acted(work, leftOver(work.progress, 15, seen), 0);
  expect(noted.progress.leftOver).toEqual([{ group: 15, old: 1, new: 0 }]);
});

test("a warp with faults: the thrum of new 200, old 306 cut back, new 307 to old 307", () => {
  const loom = loomOf("7-warp-with-faults.yaml");
  const row = (end: number) => loom.rows?.find(({ firstEnd, lastEnd }) => firstEnd <= end && end <= lastEnd);
  expect(loom.doIn[row(200)?.group ?? 0]).toContain("tie new 200 to its partner");
  expect(loom.doIn[row(306)?.group ?? 0]).toContain("cut back old 306");
  expect([loom.oldOf[199 - 1], loom.oldOf[200 - 1], loom.oldOf[201 - 1], loom.oldOf[307 - 1]]).toEqual([
    199,
    null,
    200,
    307,
  ]);
  expect(loom.shaftOf[200 - 1]).toBe(3);
  expect(loom.knots).toBe(370);
});

test("chain 1 is wound: 6 rounds of natural, 10 of madder with the count tied after 6 and 10, 3, 1½ to the far peg", () => {
  const chains = napkins.chains ?? [];
  let work = begun("a", "a.yaml", napkins);
  const seen: string[] = [];
  for (let taps = 0; taps < 500; taps += 1) {
    const at = windingNow(work.progress, chains);
    if (at === null) break;
    if (at.isFull) seen.push(`${String(at.chain.chain)}.${String(at.stripe)} ${String(at.pass)} ${at.part.endsAt}`);
    work = acted(work, wound(work.progress, at), taps);
  }
  expect(seen.slice(0, 4)).toEqual(["1.1 12 near peg", "1.2 20 near peg", "1.3 6 near peg", "1.4 3 far peg"]);
  expect(seen).toHaveLength(17);
  expect(seen).toEqual(
    chains.flatMap(({ chain, parts }) =>
      parts.map(({ passes, endsAt }, at) => `${String(chain)}.${String(at + 1)} ${String(passes)} ${endsAt}`),
    ),
  );
  // Rounds 6 + 10 + 3 + 2 + 3 + 2 + 3 + 2, 33 and 2 + 3 + 2 + 3 + 2 + 3 + 10 + 6 taps; each of the 17 changes one more.
  expect(work.seq).toBe(31 + 33 + 31 + 17);
  expect([windingNow(work.progress, chains), work.progress.winding]).toEqual([null, undefined]);
  const madder = windingNow({ job: "a", winding: { chain: 1, stripe: 2, pass: 12 } }, chains);
  expect([madder?.tie?.group, madder?.ends]).toEqual([2, 48]);
});

test("a blend is wound as one row of 24 passes", () => {
  const { chains } = loomOf("3-blended-towels.yaml");
  const blends = (chains ?? []).flatMap(({ parts }) => parts).filter(({ yarns }) => yarns.length > 1);
  expect(blends.length).toBeGreaterThan(0);
  expect(blends.every(({ passes, ends, threads }) => passes === Math.ceil(ends / threads))).toBe(true);
});

test("behind the heddles she faces the front: end 1 on the left of the loom lies at her right", () => {
  const loom = loomOf("4-scarves.yaml");
  expect([loom.side, loom.order, loom.rows?.[0]?.group]).toEqual(["left", "one colour at a time", 1]);
  expect(loomOf("4-scarves.yaml", (text) => text.replace("endOneOn: right", "endOneOn: left")).side).toBe("right");
  const colours = (loom.rows ?? []).map(({ yarns }) => yarns.join());
  expect(new Set(colours).size).toBe(colours.filter((one, at) => one !== colours[at - 1]).length);
});

test("the old warp is counted group by group to its end", () => {
  expect(toCount({ job: "a" }, napkins.groups ?? [])?.group).toBe(1);
  expect(toCount({ job: "a", counted: { old: "all" } }, napkins.groups ?? [])).toBeNull();
});
