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
});
