import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endsPerDentForEdges } from "./ends-per-dent-for-edges.js";

describe("stripe edges among the dents", () => {
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

  it.each([
    ["no end", { ends: 0 }],
    ["no edge", { edges: [] }],
    ["an edge before the first end", { edges: [0] }],
    ["no end in a dent", { mostPerDent: 0 }],
    ["more in a dent than any reed holds", { mostPerDent: 101 }],
  ])("is refused for %s", (_, change) => {
    const [field = ""] = Object.keys(change);
    expect(() => endsPerDentForEdges({ ends: 48, edges: [12], mostPerDent: 4, ...change })).toThrow(field);
  });
});
