import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endsAtSides } from "./ends-at-sides.js";

describe("ends at the sides", () => {
  const free = {
    threading: [1, 2, 3, 4],
    endsPerDent: 2,
    emptyDents: { beforeFirst: 20, afterLast: 20 },
    spareHeddles: { beforeFirst: [5, 5, 5, 5], afterLast: [5, 5, 5, 5] },
  };
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
  it("that leave a repeat open are put after the last end, and the nearest numbers that close it are named", () => {
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
});
