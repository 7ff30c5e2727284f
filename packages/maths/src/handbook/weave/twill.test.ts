import { describe, expect, it } from "vitest";
import { plainWeave } from "./plain-weave.js";
import { twill } from "./twill.js";
import { weaveQuantities } from "./weave-quantities.js";

describe("the quantities of a weave", () => {
  it("are those of the trade for plain weave and the twills every weaver knows", () => {
    const rows = [
      [plainWeave, 2, 2, 1, 1],
      [twill({ floats: [2, 1] }), 3, 2, 1.5, 2],
      [twill({ floats: [2, 2] }), 4, 2, 2, 2],
      [twill({ floats: [1, 3] }), 4, 2, 2, 3],
      [twill({ floats: [5, 2, 1, 2] }), 10, 4, 2.5, 5],
    ] as const;
    for (const [weave, ends, intersections, float, longest] of rows) {
      const found = weaveQuantities(weave);
      expect(found.ends).toBe(ends);
      expect(found.picks).toBe(ends);
      for (const set of [found.ofEnds, found.ofPicks]) {
        expect(set.intersections).toEqual(Array(ends).fill(intersections));
        expect([set.averageFloat, set.longestFloat]).toEqual([float, longest]);
      }
    }
  });

  it("are refused for a twill that does not close", () => {
    expect(() => twill({ floats: [2, 1, 1] })).toThrow("as many floats under as over");
    expect(() => twill({ floats: [0, 2] })).toThrow("floats");
    expect(() => twill({ floats: [] })).toThrow("floats");
  });
});
