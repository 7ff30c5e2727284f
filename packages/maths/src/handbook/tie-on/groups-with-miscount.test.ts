import { describe, expect, it } from "vitest";
import { groupsWithMiscount } from "./groups-with-miscount.js";

describe("a miscount", () => {
  it("is in the group whose counts do not agree", () => {
    const planned = [24, 24, 12, 24];
    const found = groupsWithMiscount({ planned, oldCounted: [24, 25, 12, 24], newCounted: [24, 24, 12, 23] });
    expect(found.map(({ group, firstEnd, lastEnd }) => [group, firstEnd, lastEnd])).toEqual([
      [2, 25, 48],
      [4, 61, 84],
    ]);
    expect(found[0]?.says).toBe("Group 2: 1 old end too many, its new ends are right.");
    expect(groupsWithMiscount({ planned, oldCounted: planned, newCounted: planned })).toEqual([]);
    expect(() => groupsWithMiscount({ planned, oldCounted: [24], newCounted: planned })).toThrow("a list of 4");
  });
});
