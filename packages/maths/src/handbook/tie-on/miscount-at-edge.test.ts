import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { miscountAtEdge } from "./index.js";

describe("a miscount seen at the edge of a stripe", () => {
  // The hall napkins, group by group: edge 9 stands after end 118, edge 15 after end 250.
  const planned = [24, 24, 16, 12, 6, 12, 6, 12, 6, 24, 24, 24, 24, 24, 12];
  const edge = { planned, lastRight: 9, foundAt: 15, countedRight: [], countedOdd: [] };

  // 24 + 24 + 16 + 12 + 6 + 12 + 6 + 12 + 6 = 118 ends before it; 118 + 5 × 24 + 12 up to its edge.
  const left = { ...edge, oldSeen: 1, newSeen: 0 };
  cited(
    "first end of a miscount after edge 9 of the hall napkins",
    byHand(commonPractice, "119"),
    miscountAtEdge,
    [left],
    "firstEnd",
  );
  cited(
    "last end of a miscount found at edge 15 of the hall napkins",
    byHand(commonPractice, "250"),
    miscountAtEdge,
    [left],
    "lastEnd",
  );

  it("lies in the groups after the last edge that agreed", () => {
    expect(miscountAtEdge(left).groups).toEqual([10, 11, 12, 13, 14, 15]);
  });

  it("lies in the one end of a first group, where no edge agreed before", () => {
    const found = miscountAtEdge({ ...left, planned: [1], lastRight: 0, foundAt: 1 });
    expect(found).toMatchObject({ groups: [1], firstEnd: 1, lastEnd: 1 });
  });

  it("with a new end left, an old one was passed over or two lie in one knot: look for a bare old end", () => {
    const found = miscountAtEdge({ ...edge, oldSeen: 0, newSeen: 1 });
    expect(found.lookFor).toBe("a bare old end");
    expect(found.says).toBe(
      "1 new left over: an old end was passed over, or two old ends lie in one knot; else the chain holds one too many. Look for a bare old end between ends 119 and 250.",
    );
  });

  it("with an old end left, a new one was passed over or two lie in one knot: look for a loose new end", () => {
    const found = miscountAtEdge({ ...edge, oldSeen: 1, newSeen: 0 });
    expect(found.lookFor).toBe("a loose new end");
    expect(found.says).toBe(
      "1 old left over: a new end was passed over, or two new ends lie in one knot; else the chain is short. Look for a loose new end between ends 119 and 250.",
    );
  });

  it("is looked for first in the group counted odd, and not in groups whose both counts were right", () => {
    const counted = { lastRight: 6, foundAt: 9, countedRight: [7, 8], countedOdd: [9] };
    const found = miscountAtEdge({ ...edge, ...counted, oldSeen: 1, newSeen: 0 });
    expect(found).toMatchObject({ groups: [9], firstEnd: 95, lastEnd: 118 });
    expect(found.says).toContain("First in group 9, which was counted odd.");
    const all = miscountAtEdge({ ...edge, countedRight: [11], countedOdd: [14], oldSeen: 1, newSeen: 0 });
    expect(all.groups).toEqual([14, 10, 12, 13, 15]);
  });

  it("is none where nothing is seen, and not yet one where both are: tie on", () => {
    expect(() => miscountAtEdge({ ...edge, oldSeen: 0, newSeen: 0 })).toThrow("hold its last dent and shaft");
    expect(() => miscountAtEdge({ ...edge, oldSeen: 2, newSeen: 1 })).toThrow("Tie on until one of the two runs out.");
    for (const [oldSeen, newSeen] of [
      [0, 0],
      [2, 1],
    ]) {
      const given = { ...edge, oldSeen, newSeen };
      expect(codesOf(miscountAtEdge, given)).toEqual(["no-answer newSeen"]);
      expect(faultsOf(miscountAtEdge, given)).toEqual(["miscountAtEdge({ newSeen }): ends of one warp left over"]);
    }
  });

  it("is refused at an edge that agreed, and for groups and ends that are none", () => {
    expect(codesOf(miscountAtEdge, { ...left, foundAt: 9 })).toEqual(["out-of-range foundAt"]);
    expect(faultsOf(miscountAtEdge, { ...left, foundAt: 9 })).toEqual([
      "miscountAtEdge({ foundAt }): a group after the last that agreed",
    ]);
    const given = {
      planned: [0, 24],
      lastRight: 2,
      foundAt: 3,
      oldSeen: -1,
      newSeen: -1,
      countedRight: [0],
      countedOdd: [3],
    };
    const fields = ["planned.0", "lastRight", "foundAt", "oldSeen", "newSeen", "countedRight.0", "countedOdd.0"];
    expect(codesOf(miscountAtEdge, given)).toEqual(fields.map((field) => `out-of-range ${field}`));
    expect(faultsOf(miscountAtEdge, given)).toEqual([
      "miscountAtEdge({ planned[0] }): a whole number of ends, 1 or more",
      "miscountAtEdge({ lastRight }): a whole number of groups, no more than 1",
      "miscountAtEdge({ foundAt }): a whole number of groups, no more than 2",
      "miscountAtEdge({ oldSeen }): a whole number of ends, 0 or more",
      "miscountAtEdge({ newSeen }): a whole number of ends, 0 or more",
      "miscountAtEdge({ countedRight[0] }): a whole number of groups, 1 or more",
      "miscountAtEdge({ countedOdd[0] }): a whole number of groups, no more than 2",
    ]);
    expect(faultsOf(miscountAtEdge, { ...left, lastRight: -1, foundAt: 0 })).toEqual([
      "miscountAtEdge({ lastRight }): a whole number of groups, 0 or more",
      "miscountAtEdge({ foundAt }): a whole number of groups, 1 or more",
    ]);
  });

  it("never lies outside the groups tied since", () => {
    const edges = fc.tuple(fc.nat(13), fc.integer({ min: 1, max: 15 })).filter(([right, at]) => at > right);
    fc.assert(
      fc.property(edges, fc.array(fc.integer({ min: 1, max: 15 })), ([lastRight, foundAt], countedOdd) => {
        const found = miscountAtEdge({ ...edge, lastRight, foundAt, countedOdd, oldSeen: 0, newSeen: 1 });
        expect(found.groups).toHaveLength(foundAt - lastRight);
        expect(found.groups.every((group) => group > lastRight && group <= foundAt)).toBe(true);
        const ends = planned.slice(lastRight, foundAt).reduce((total, group) => total + group, 0);
        expect(found.lastEnd - found.firstEnd + 1).toBe(ends);
      }),
    );
  });
});
