import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { endsPerDentForEdges } from "./ends-per-dent-for-edges.js";

describe("stripe edges among the dents", () => {
  // 12 = 3 × 4 and 48 = 12 × 4 close a dent of four; 30 = 7 × 4 + 2 leaves two ends of the next stripe in dent 8.
  cited(
    "edges inside the dents of four, of stripes that end at 12, 30 and 48",
    byHand(commonPractice, "30"),
    endsPerDentForEdges,
    [{ ends: 48, edges: [12, 30, 48], mostPerDent: 4 }],
    "3.edgesInsideDents",
  );

  it("tells for every number in a dent which edges it would cut", () => {
    expect(endsPerDentForEdges({ ends: 48, edges: [12, 30, 48], mostPerDent: 5 })).toEqual([
      { endsPerDent: 1, edgesInsideDents: [] },
      { endsPerDent: 2, edgesInsideDents: [] },
      { endsPerDent: 3, edgesInsideDents: [] },
      { endsPerDent: 4, edgesInsideDents: [30] },
      { endsPerDent: 5, edgesInsideDents: [12] },
    ]);
  });

  it("tells of one end in one dent that it cuts nothing, and keeps every edge between dents of one", () => {
    expect(endsPerDentForEdges({ ends: 1, edges: [1], mostPerDent: 1 })).toEqual([
      { endsPerDent: 1, edgesInsideDents: [] },
    ]);
    const edge = fc.integer({ min: 1, max: 400 });
    fc.assert(
      fc.property(fc.array(edge, { minLength: 1, maxLength: 9 }), fc.integer({ min: 1, max: 12 }), (edges, most) => {
        const [single, ...others] = endsPerDentForEdges({ ends: 400, edges, mostPerDent: most });
        expect(single?.edgesInsideDents).toEqual([]);
        for (const { endsPerDent, edgesInsideDents } of others)
          expect(new Set(edgesInsideDents)).toEqual(new Set(edges.filter((one) => one < 400 && one % endsPerDent > 0)));
      }),
    );
  });

  it("tells of dents of up to a hundred, where edge 100 closes the first and edge 50 cuts it", () => {
    expect(endsPerDentForEdges({ ends: 200, edges: [50, 100], mostPerDent: 100 }).at(-1)).toEqual({
      endsPerDent: 100,
      edgesInsideDents: [50],
    });
  });

  it.each([
    ["no end", { ends: 0 }, "out-of-range ends"],
    ["no edge", { edges: [] }, "empty edges"],
    ["an edge before the first end", { edges: [12, 0] }, "out-of-range edges.1"],
    ["half an end", { edges: [2.5] }, "not-whole edges.0"],
    ["an edge past the last end", { edges: [49] }, "out-of-range edges"],
    ["no end in a dent", { mostPerDent: 0 }, "out-of-range mostPerDent"],
    ["more in a dent than any reed holds", { mostPerDent: 101 }, "out-of-range mostPerDent"],
  ])("is refused for %s", (_, change, code) => {
    expect(codesOf(endsPerDentForEdges, { ends: 48, edges: [12], mostPerDent: 4, ...change })).toEqual([code]);
  });
});
