import { sequence } from "@thrum/stripes";
import { describe, expect, it } from "vitest";
import { oldGroups, tyingGroups } from "./groups.js";

const straight = { endsPerDent: 2, threading: [1, 2, 3, 4] };

describe("the old warp", () => {
  it("is counted by its own ends and repeats, whatever the new stripes are", () => {
    const found = oldGroups({ ends: 60, threading: straight.threading });
    expect(found).toEqual([
      { group: 1, ends: 24, firstEnd: 1, lastEnd: 24, firstShaft: 1, lastShaft: 4 },
      { group: 2, ends: 24, firstEnd: 25, lastEnd: 48, firstShaft: 1, lastShaft: 4 },
      { group: 3, ends: 12, firstEnd: 49, lastEnd: 60, firstShaft: 1, lastShaft: 4 },
    ]);
  });

  it("of a long repeat is counted in even parts of it", () => {
    const threading = Array.from({ length: 32 }, (_, at) => (at % 8) + 1);
    const found = oldGroups({ ends: 40, threading });
    expect(found.map(({ ends, firstShaft, lastShaft }) => [ends, firstShaft, lastShaft])).toEqual([
      [16, 1, 8],
      [16, 1, 8],
      [8, 1, 8],
    ]);
  });
});

describe("the knots", () => {
  it("are cut at every stripe edge too, each group with its last dent", () => {
    const warp = sequence([
      { colour: "red", ends: 30 },
      { colour: "blue", ends: 6 },
    ]);
    const found = tyingGroups(warp, straight);
    expect(
      found.map(({ group, stripe, firstEnd, lastEnd, lastDent, endsStripe }) => [
        ...[group, stripe, firstEnd, lastEnd, lastDent],
        endsStripe,
      ]),
    ).toEqual([
      [1, 1, 1, 24, 12, false],
      [2, 1, 25, 30, 15, true],
      [3, 2, 31, 36, 18, true],
    ]);
  });

  it("of a stripe that can be counted at a glance stay one group, wherever its repeats fall", () => {
    const warp = sequence([
      { colour: "red", ends: 22 },
      { colour: "blue", ends: 6 },
      { colour: "white", ends: 50 },
    ]);
    // White begins at end 29: 29 + 23 = 52 ends a repeat of four, then 76, and 2 are left.
    expect(tyingGroups(warp, straight).map(({ firstEnd, lastEnd }) => [firstEnd, lastEnd])).toEqual([
      [1, 22],
      [23, 28],
      [29, 52],
      [53, 76],
      [77, 78],
    ]);
  });
});
