import { describe, expect, it } from "vitest";
import { brooks1892, commonPractice, taylor1909 } from "#ci/sources.js";
import { cottonCount, endsPerInch, inches, millimetres, tex } from "../../units/index.js";
import {
  countsOfWarp,
  endsAtSides,
  groupsWithMiscount,
  hoursToJoin,
  joiningOrThreading,
  knotClearance,
  knotsThroughHeddles,
  knotsThroughReed,
  leaseLifts,
  tieOn,
  wasteByKnots,
} from "./index.js";

describe("the old warp is told", () => {
  const warp = { ends: 10, sharingHeddle: 4, floating: 2, lost: 3, endsInEachDent: [2] };

  it("in its four counts", () => {
    expect(countsOfWarp(warp).says).toBe("10 ends in 4 heddles and 5 dents: 7 knots to tie.");
  });

  it("even where no heddle or no knot is left, and not where there would be fewer than none", () => {
    expect(countsOfWarp({ ...warp, sharingHeddle: 8 }).heddles).toBe(0);
    expect(countsOfWarp({ ...warp, lost: 10 }).knots).toBe(0);
    expect(() => countsOfWarp({ ...warp, sharingHeddle: 9 })).toThrow(
      "countsOfWarp(…): expected a warp that can stand so, received more doubled, floating or lost ends than there are.",
    );
  });
});

describe("the comparison of two warps says", () => {
  const old = { ends: 384, sett: endsPerInch(20), threading: [1, 2, 3, 4], count: cottonCount(4) };
  const same = { ...old, edges: [96, 384] };
  const said = (change: object): readonly string[] =>
    tieOn(old, { ...same, ...change }).findings.map(({ says }) => says);

  it("what agrees", () => {
    expect(said({})).toEqual([
      "Both warps have 384 ends: one knot to each.",
      "Both plans count on one threading repeat of 4 ends.",
      "Both are planned at 20 ends/in in the reed.",
      "Both yarns are of one grist.",
      "Every stripe edge closes a threading repeat of 4 ends.",
    ]);
  });

  it("which way each thing differs, and what stays", () => {
    const more = said({ ends: 386, threading: [1, 2], sett: endsPerInch(24), count: cottonCount(2), edges: [97, 386] });
    expect(more).toEqual([
      "The new warp has 2 ends too many: each needs a spare heddle and a place in the reed, or must go.",
      "The old warp is threaded in repeats of 4 ends, the new plan counts on 2: the threading stays as it is.",
      "The new plan is closer, 24 ends/in for 20 ends/in: the sett stays unless the reed is sleyed afresh.",
      "The new yarn is heavier, about 200 % of the old weight for its length: look whether the cloth wants the same sett, and whether the knots pass.",
      "1 stripe edge of 1 inside a threading repeat of 4 ends: end 97 at place 1.",
    ]);
    const fewer = said({ ends: 382, sett: endsPerInch(16), count: cottonCount(8), edges: [382] });
    expect(fewer.slice(0, 4)).toEqual([
      "The new warp is 2 ends short: so many old ends are left without a partner.",
      "Both plans count on one threading repeat of 4 ends.",
      "The new plan is more open, 16 ends/in for 20 ends/in: the sett stays unless the reed is sleyed afresh.",
      "The new yarn is lighter, about 50 % of the old weight for its length: look whether the cloth wants the same sett, and whether the knots pass.",
    ]);
  });

  it("both figures of each and the new less the old, by whose rule, and how much it weighs", () => {
    const new384 = { ...same, threading: [1, 2, 3, 4, 3, 2], sett: endsPerInch(24), edges: [97, 100, 384] };
    const { findings, verdict } = tieOn(old, { ...new384, count: tex(295) });
    expect(verdict).toBe("does not fit");
    const table = findings.map(({ about, standing, agrees, old: was, new: is, difference: by, source }) => [
      about,
      standing,
      agrees,
      String(was),
      String(is),
      String(by),
      source,
    ]);
    expect(table.filter(([about]) => about !== "grist")).toEqual([
      ["ends", "must", true, "384", "384", "0", taylor1909],
      ["threading", "must", false, "4", "6", "2", taylor1909],
      ["sett", "check", false, "20 ends/in", "24 ends/in", "4 ends/in", brooks1892],
      ["stripe edges", "free", false, "2", "1", "-1", commonPractice],
    ]);
    const grist = findings.find(({ about }) => about === "grist");
    expect(grist).toMatchObject({ standing: "check", agrees: false, source: taylor1909 });
    expect(grist?.new).toEqual(tex(295));
    expect(tieOn(old, same).findings.find(({ about }) => about === "grist")?.agrees).toBe(true);
  });
});

describe("ends at the sides are told", () => {
  const side = { beforeFirst: 1, afterLast: 1 };
  const heddles = { beforeFirst: [0, 0, 0, 0], afterLast: [1, 1, 0, 0] };
  const given = { threading: [1, 2, 3, 4], endsPerDent: 2, emptyDents: side, spareHeddles: heddles };
  const said = (oldEnds: number, newEnds: number): string => endsAtSides({ ...given, oldEnds, newEnds }).says;

  it("as added, dropped or neither, one end or more", () => {
    expect(said(8, 8)).toBe("Both warps have as many ends: nothing is added or dropped.");
    expect(said(8, 9)).toBe(
      "Add 0 ends before end 1 and 1 end after the last. The last repeat or dent stays open: 8 or 12 ends would close it, 4 ends a step.",
    );
    expect(said(16, 8)).toBe("Drop 4 ends before end 1 and 4 ends after the last.");
  });

  it("with what is short at each side, and just enough is not short", () => {
    expect(endsAtSides({ ...given, oldEnds: 8, newEnds: 10 }).sides[1]).toMatchObject({
      dentsLeft: 0,
      heddlesLeft: [0, 0, 0, 0],
      shortages: [],
    });
    expect(said(8, 16)).toBe(
      "Add 4 ends before end 1 and 4 ends after the last. " +
        "Heddles short before end 1: 1 on shaft 1, 1 on shaft 2, 1 on shaft 3, 1 on shaft 4; hang repair heddles there, or move the warp to the other side. " +
        "Dents short before end 1: 1; a longer reed is needed, or fewer ends at this side. " +
        "Heddles short after the last end: 1 on shaft 3, 1 on shaft 4; hang repair heddles there, or move the warp to the other side. " +
        "Dents short after the last end: 1; a longer reed is needed, or fewer ends at this side.",
    );
  });

  it("by the heddles that end 0, -1 and so on would take, in the order threaded", () => {
    const order = { ...given, threading: [1, 1, 2], endsPerDent: 3 };
    const { sides } = endsAtSides({ ...order, oldEnds: 3, newEnds: 9 });
    expect(sides.map(({ heddles: on }) => on)).toEqual([
      [2, 1, 0, 0],
      [2, 1, 0, 0],
    ]);
    const dropped = endsAtSides({ ...order, oldEnds: 9, newEnds: 3 });
    expect(dropped.sides.map(({ heddles: on, heddlesLeft }) => [on, heddlesLeft])).toEqual([
      [
        [-2, -1, 0, 0],
        [2, 1, 0, 0],
      ],
      [
        [-2, -1, 0, 0],
        [3, 2, 0, 0],
      ],
    ]);
    expect(dropped.sides.map(({ side: name }) => name)).toEqual(["before end 1", "after the last end"]);
    expect(dropped.step).toBe(3);
    expect(endsAtSides({ ...order, endsPerDent: 2, oldEnds: 9, newEnds: 9 }).step).toBe(6);
  });
});

describe("a lease is told", () => {
  const lease = (threading: number[], times = 1): string =>
    leaseLifts({ shafts: 4, parts: [{ threading, times }] }).says;

  it("by its shafts, or by the first neighbours that forbid it and how many more", () => {
    expect(lease([1, 2, 3, 4])).toBe("Shafts 1 and 3 against 2 and 4 raise alternate ends.");
    expect(lease([4, 3, 2, 1])).toBe("Shafts 2 and 4 against 1 and 3 raise alternate ends.");
    expect(lease([1, 2, 2, 3])).toBe("No two lifts part ends 2 and 3: pick the lease up by hand there.");
    expect(lease([2, 2, 1, 1])).toBe(
      "No two lifts part ends 1 and 2 and 1 more such places: pick the lease up by hand there.",
    );
  });

  it("with the shafts of end 1 first, however late its group was joined", () => {
    const found = leaseLifts({ shafts: 6, parts: [{ threading: [3, 1, 2, 1, 5, 6, 5, 4], times: 1 }] });
    expect(found).toMatchObject({
      lifts: [
        [2, 3, 5],
        [1, 4, 6],
      ],
      together: [],
    });
  });
});

describe("knots are told", () => {
  const diameters = { oldDiameter: millimetres(1), newDiameter: millimetres(1) };
  const thread = { ...diameters, endsInDent: 1 };
  const grades = (gap: string): readonly string[] =>
    knotsThroughReed({ space: millimetres(gap), ...thread, knot: "square" }).grades;

  it("at the very edges of the grades: a square knot needs 3, and below 2 it sticks", () => {
    // The band is ± 30 %: 30/13 × 1.3 is 3; 20/13 × 1.3 is 2; 30/7 × 0.7 is 3; 20/7 × 0.7 is 2.
    expect(grades("2.307")).toEqual(["passes with easing", "expect sticking"]);
    expect(grades("2.308")).toEqual(["passes", "passes with easing", "expect sticking"]);
    expect(grades("1.538")).toEqual(["will not pass"]);
    expect(grades("1.539")).toEqual(["passes with easing", "expect sticking"]);
    expect(grades("2.857")).toEqual(["passes", "passes with easing", "expect sticking"]);
    expect(grades("2.858")).toEqual(["passes", "passes with easing"]);
    expect(grades("4.285")).toEqual(["passes", "passes with easing"]);
    expect(grades("4.286")).toEqual(["passes"]);
  });

  it("in one sentence, with the sum behind it", () => {
    const found = knotsThroughReed({ space: millimetres("2.5"), ...thread, knot: "square" });
    expect(found.needs).toBe(3);
    expect(found.says).toBe(
      "A dent is 2.5 threads wide, between 1.8 and 3.3 as far as it can be reckoned; this knot needs 3 to pass untouched: passes, or passes with easing, or expect sticking. Tie one and draw it through one dent.",
    );
    expect(found.steps).toEqual([{ calculation: knotClearance, input: { space: millimetres("2.5"), ...diameters } }]);
  });

  it("by the eye each needs; one that fits to a hair passes", () => {
    const half = millimetres("0.5");
    const square = { oldDiameter: half, newDiameter: half, knot: "square" } as const;
    const metal = { ...square, eye: "metal", eyeWidth: millimetres("1.5"), eyeHeight: millimetres(2) } as const;
    expect(knotsThroughHeddles(metal)).toMatchObject({
      verdict: "passes",
      says: "A hard knot of this thread needs an eye 1.5 mm wide and 2 mm high: it passes. Tie one and draw it through one heddle.",
    });
    const narrow = { ...metal, eyeWidth: millimetres("1.49") };
    expect(knotsThroughHeddles(narrow).verdict).toBe("does not pass untouched");
    const cord = { ...metal, eye: "cord", eyeWidth: millimetres("0.1"), eyeHeight: millimetres("2.49") } as const;
    expect(knotsThroughHeddles(cord).says).toBe(
      "A hard knot of this thread needs an eye 2.5 mm high: it does not pass untouched. Tie one and draw it through one heddle.",
    );
  });
});

describe("waste is told", () => {
  const usual = { wasteInFront: inches(10), wasteBehind: inches(18) };

  it("by the rod the old ends go to", () => {
    expect(wasteByKnots({ knotsTied: "behind the heddles", ...usual })).toMatchObject({
      inFront: inches(0),
      behind: inches(18),
      inAll: inches(18),
      sparedAt: "front",
      says: "The old ends come forward on to the front rod: 10 in of new warp is spared there, the waste behind stays.",
    });
    for (const knotsTied of ["in front of the reed", "behind the reed"] as const)
      expect(wasteByKnots({ knotsTied, ...usual })).toMatchObject({
        inFront: inches(10),
        behind: inches(0),
        spared: inches(18),
        says: "The old ends are drawn on to the back rod: 18 in of new warp is spared there, the waste in front stays.",
      });
  });
});

describe("a miscount is told", () => {
  it("by the group, in the number of ends", () => {
    const found = groupsWithMiscount({ planned: [24, 24], oldCounted: [22, 24], newCounted: [24, 26] });
    expect(found.map(({ says }) => says)).toEqual([
      "Group 1: 2 old ends too few, its new ends are right.",
      "Group 2: its old ends are right, 2 new ends too many.",
    ]);
  });
});

describe("joining is told", () => {
  const rates = { knotsPerHour: 200, endsPerHourThreading: 200, newWarpSpared: inches(8), oldWarpGivenUp: inches(8) };
  const hours = { ends: 200, otherHoursJoining: 1, otherHoursThreading: 1 };

  it("as saving nothing where nothing is saved, with the sum behind it", () => {
    const even = joiningOrThreading({ ...rates, ...hours });
    expect(even.says).toBe(
      "Joining takes 0.0 hours fewer than threading afresh and saves no yarn. The proved threading and sley are kept either way of reckoning.",
    );
    expect(even.steps).toEqual([{ calculation: hoursToJoin, input: { knots: 200, knotsPerHour: 200 } }]);
    const fewer = joiningOrThreading({ ...rates, ...hours, otherHoursThreading: 3, newWarpSpared: inches(18) });
    expect(fewer.says).toMatch(/^Joining takes 2\.0 hours fewer than threading afresh and saves 10 in of every end\./u);
  });
});
