import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { groupsWithMiscount } from "./groups-with-miscount.js";

describe("a miscount", () => {
  const planned = [24, 24, 12, 24];
  const counted = { planned, oldCounted: [24, 25, 12, 24], newCounted: [24, 24, 12, 23] };

  // 24 + 24 + 12 ends stand before the fourth group.
  cited(
    "first end of the second miscount, in the fourth group of 24, 24, 12 and 24 ends",
    byHand(commonPractice, "61"),
    groupsWithMiscount,
    [counted],
    "1.firstEnd",
  );

  it("is in the group whose counts do not agree", () => {
    const found = groupsWithMiscount(counted);
    expect(found.map(({ group, firstEnd, lastEnd }) => [group, firstEnd, lastEnd])).toEqual([
      [2, 25, 48],
      [4, 61, 84],
    ]);
    expect(found[0]?.says).toBe("Group 2: 1 old end too many, its new ends are right.");
    expect(groupsWithMiscount({ planned, oldCounted: planned, newCounted: planned })).toEqual([]);
  });

  it("adds up over the groups to what is over or short in the whole warp", () => {
    const ends = fc.integer({ min: 1, max: 30 });
    const sum = (of: readonly number[]): number => of.reduce((total, one) => total + one, 0);
    fc.assert(
      fc.property(fc.array(fc.tuple(ends, ends, ends), { minLength: 1, maxLength: 20 }), (groups) => {
        const [plan, old, now] = [0, 1, 2].map((at) => groups.map((group) => group[at] ?? 0)) as [
          number[],
          number[],
          number[],
        ];
        const found = groupsWithMiscount({ planned: plan, oldCounted: old, newCounted: now });
        expect(sum(found.map(({ oldOff }) => oldOff))).toBe(sum(old) - sum(plan));
        expect(sum(found.map(({ newOff }) => newOff))).toBe(sum(now) - sum(plan));
        for (const { group, firstEnd, lastEnd } of found) expect(lastEnd - firstEnd + 1).toBe(plan[group - 1]);
      }),
    );
  });

  it("of the one end of a single group leaves none of it", () => {
    const found = groupsWithMiscount({ planned: [1], oldCounted: [0], newCounted: [1] });
    expect(found).toMatchObject([{ group: 1, firstEnd: 1, lastEnd: 1, oldOff: -1, newOff: 0 }]);
    expect(found[0]?.says).toBe("Group 1: 1 old end too few, its new ends are right.");
  });

  it("is refused for a group of none, a count below none, and lists unlike in length", () => {
    const given = { planned: [0], oldCounted: [-1], newCounted: [-1] };
    const fields = ["planned.0", "oldCounted.0", "newCounted.0"];
    expect(codesOf(groupsWithMiscount, given)).toEqual(fields.map((field) => `out-of-range ${field}`));
    expect(faultsOf(groupsWithMiscount, given)).toEqual([
      "groupsWithMiscount({ planned[0] }): a whole number of ends, 1 or more",
      "groupsWithMiscount({ oldCounted[0] }): a whole number of ends, 0 or more",
      "groupsWithMiscount({ newCounted[0] }): a whole number of ends, 0 or more",
    ]);
    expect(codesOf(groupsWithMiscount, { planned, oldCounted: [24], newCounted: planned })).toEqual([
      "wrong-kind oldCounted",
    ]);
    expect(() => groupsWithMiscount({ planned, oldCounted: [24], newCounted: planned })).toThrow("a list of 4");
  });
});
