import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { endsAtSides } from "./ends-at-sides.js";

describe("ends at the sides", () => {
  const free = {
    threading: [1, 2, 3, 4],
    endsPerDent: 2,
    emptyDents: { beforeFirst: 20, afterLast: 20 },
    spareHeddles: { beforeFirst: [5, 5, 5, 5], afterLast: [5, 5, 5, 5] },
  };
  // 206 − 182 = 24 are six steps of four ends, three of them at each side.
  cited(
    "ends added before end 1, of a warp of 206 on one of 182",
    byHand(commonPractice, "12"),
    endsAtSides,
    [{ oldEnds: 182, newEnds: 206, ...free }],
    "sides.0.ends",
  );
  it("of a warp of 206 on one of 182 are twelve at each", () => {
    const found = endsAtSides({ oldEnds: 182, newEnds: 206, ...free });
    expect(found.verdict).toBe("fits");
    expect(found.sides.map(({ ends, dents, heddles }) => ({ ends, dents, heddles }))).toEqual([
      { ends: 12, dents: 6, heddles: [3, 3, 3, 3] },
      { ends: 12, dents: 6, heddles: [3, 3, 3, 3] },
    ]);
    expect(found.says).toBe("Add 12 ends before end 1 and 12 ends after the last.");
  });
  it("are dropped in whole repeats, heddles and dents left empty", () => {
    const found = endsAtSides({ oldEnds: 384, newEnds: 368, ...free });
    expect(found.sides.map(({ ends, dents, heddles }) => ({ ends, dents, heddles }))).toEqual([
      { ends: -8, dents: -4, heddles: [-2, -2, -2, -2] },
      { ends: -8, dents: -4, heddles: [-2, -2, -2, -2] },
    ]);
  });
  it("are put after the last end where they leave a repeat open, and the nearest numbers that close it are named", () => {
    const found = endsAtSides({ oldEnds: 360, newEnds: 370, ...free });
    expect(found).toMatchObject({ verdict: "check", nearest: [368, 372], step: 4 });
    expect(found.sides.map(({ ends }) => ends)).toEqual([4, 6]);
    expect(found.sides[1].heddles).toEqual([2, 2, 1, 1]);
  });
  it("short of a heddle on one shaft of one side do not fit, with the remedy", () => {
    const spareHeddles = { beforeFirst: [5, 5, 2, 5], afterLast: [5, 5, 5, 5] };
    const found = endsAtSides({ oldEnds: 182, newEnds: 206, ...free, spareHeddles });
    expect(found.verdict).toBe("does not fit");
    expect(found.sides[0].shortages).toEqual([
      "Heddles short before end 1: 1 on shaft 3; hang repair heddles there, or move the warp to the other side.",
    ]);
    const emptyDents = { beforeFirst: 20, afterLast: 4 };
    const [, after] = endsAtSides({ oldEnds: 182, newEnds: 206, ...free, emptyDents }).sides;
    expect(after.shortages[0]).toContain("Dents short after the last end: 2");
  });
  it("together are always the difference, and those before end 1 whole repeats and whole dents", () => {
    const ends = fc.integer({ min: 1, max: 3000 });
    const repeat = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(ends, ends, repeat, fc.integer({ min: 1, max: 4 }), (oldEnds, newEnds, threading, endsPerDent) => {
        const { sides, difference, step, nearest } = endsAtSides({ ...free, oldEnds, newEnds, threading, endsPerDent });
        expect(sides[0].ends + sides[1].ends).toBe(newEnds - oldEnds);
        expect(difference).toBe(newEnds - oldEnds);
        expect(Math.abs(sides[0].ends % threading.length)).toBe(0);
        expect(Math.abs(sides[0].ends % endsPerDent)).toBe(0);
        for (const { ends: added, heddles } of sides) expect(heddles.reduce((total, on) => total + on, 0)).toBe(added);
        expect(nearest[0]).toBeLessThanOrEqual(newEnds);
        expect(nearest[1] - nearest[0] === 0 || nearest[1] - nearest[0] === step).toBe(true);
      }),
    );
  });
  it("take the last spare heddle and the last empty dent of each side, and not one more", () => {
    // 24 more are twelve at a side: three repeats of four and six dents of two.
    const last = {
      ...free,
      emptyDents: { beforeFirst: 6, afterLast: 6 },
      spareHeddles: { beforeFirst: [3, 3, 3, 3], afterLast: [3, 3, 3, 3] },
    };
    const found = endsAtSides({ oldEnds: 182, newEnds: 206, ...last });
    expect(found.verdict).toBe("fits");
    for (const side of found.sides) expect(side).toMatchObject({ dentsLeft: 0, heddlesLeft: [0, 0, 0, 0] });
    expect(endsAtSides({ oldEnds: 182, newEnds: 207, ...last }).verdict).toBe("does not fit");
    expect(endsAtSides({ oldEnds: 182, newEnds: 182, ...last })).toMatchObject({
      verdict: "fits",
      nearest: [182, 182],
    });
  });
  it("are refused with each fault named, in the order the sides are read", () => {
    const ends = { oldEnds: 8, newEnds: 9, threading: [1, 2, 3], endsPerDent: 1 };
    const dents = { beforeFirst: 0, afterLast: 1 };
    const spares = { beforeFirst: [0, 0, 0], afterLast: [0, 0, 0] };
    const given = { ...ends, emptyDents: dents, spareHeddles: spares };
    const both = (field: string, one: string, wanted: string): string[] =>
      ["beforeFirst", "afterLast"].map((side) => `endsAtSides({ ${field}.${side}${one} }): ${wanted}`);
    const none = { oldEnds: 0, newEnds: 0, threading: [0, 1001], endsPerDent: 0 };
    expect(faultsOf(endsAtSides, { ...given, ...none })).toEqual([
      "endsAtSides({ oldEnds }): a whole number of ends, 1 or more",
      "endsAtSides({ newEnds }): a whole number of ends, 1 or more",
      "endsAtSides({ threading[0] }): a whole number of shafts, 1 or more",
      "endsAtSides({ threading[1] }): a whole number of shafts, no more than 1000",
      "endsAtSides({ endsPerDent }): a whole number of ends in each dent, 1 or more",
    ]);
    expect(codesOf(endsAtSides, { ...given, ...none })).toEqual(
      ["oldEnds", "newEnds", "threading.0", "threading.1", "endsPerDent"].map((field) => `out-of-range ${field}`),
    );
    const many = { oldEnds: 1_000_001, newEnds: 1_000_001 };
    expect(faultsOf(endsAtSides, { ...given, ...many })).toEqual([
      "endsAtSides({ oldEnds }): a whole number of ends, no more than 1000000",
      "endsAtSides({ newEnds }): a whole number of ends, no more than 1000000",
    ]);
    expect(faultsOf(endsAtSides, { ...given, emptyDents: { beforeFirst: -1, afterLast: -1 } })).toEqual(
      both("emptyDents", "", "a whole number of dents, 0 or more"),
    );
    expect(faultsOf(endsAtSides, { ...given, spareHeddles: { beforeFirst: [-1], afterLast: [-1] } })).toEqual(
      both("spareHeddles", "[0]", "a whole number of heddles, 0 or more"),
    );
    expect(faultsOf(endsAtSides, { ...given, spareHeddles: { ...spares, afterLast: [0, 0] } })).toEqual([
      "endsAtSides({ spareHeddles.afterLast }): a number for each of 3 shafts",
    ]);
    expect(codesOf(endsAtSides, { ...given, spareHeddles: { ...spares, afterLast: [0, 0] } })).toEqual([
      "missing spareHeddles.afterLast",
    ]);
    expect(endsAtSides({ ...given, oldEnds: 1_000_000, newEnds: 1_000_000 }).verdict).toBe("fits");
  });
});
