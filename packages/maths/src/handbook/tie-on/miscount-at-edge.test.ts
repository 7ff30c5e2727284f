import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { miscountAtEdge } from "./index.js";

describe("a miscount seen at the edge of a stripe", () => {
  // The hall napkins, group by group: edge 9 stands after end 118, edge 15 after end 250.
  const planned = [24, 24, 16, 12, 6, 12, 6, 12, 6, 24, 24, 24, 24, 24, 12];
  const edge = { planned, lastRight: 9, foundAt: 15, countedRight: [], countedOdd: [] };

  it("lies after the last edge that agreed: ends 119 to 250", () => {
    const found = miscountAtEdge({ ...edge, oldSeen: 1, newSeen: 0 });
    expect(found).toMatchObject({ firstEnd: 119, lastEnd: 250, groups: [10, 11, 12, 13, 14, 15] });
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
    expect(() => miscountAtEdge({ ...edge, foundAt: 9, oldSeen: 1, newSeen: 0 })).toThrow("after the last that agreed");
    expect(() => miscountAtEdge({ ...edge, countedOdd: [16], oldSeen: 1, newSeen: 0 })).toThrow("no more than 15");
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
