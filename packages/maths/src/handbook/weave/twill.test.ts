import { describe, expect, it } from "vitest";
import { QuantityError } from "../../engine/refusal.js";
import { averageFloat } from "./average-float.js";
import { basket } from "./basket.js";
import { plainWeave } from "./plain-weave.js";
import { satin } from "./satin.js";
import { twill } from "./twill.js";
import { weaveQuantities } from "./weave-quantities.js";

describe("the quantities of a weave", () => {
  it("are those of the trade for the weaves every weaver knows", () => {
    const rows = [
      [plainWeave, 2, 2, 1, 1],
      [twill({ floats: [2, 1] }), 3, 2, 1.5, 2],
      [twill({ floats: [2, 2] }), 4, 2, 2, 2],
      [twill({ floats: [1, 3] }), 4, 2, 2, 3],
      [twill({ floats: [5, 2, 1, 2] }), 10, 4, 2.5, 5],
      [satin({ ends: 5, move: 2 }), 5, 2, 2.5, 4],
      [satin({ ends: 8, move: 3 }), 8, 2, 4, 7],
      [basket({ together: 2 }), 4, 2, 2, 2],
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
  it("are refused for a twill that does not close, a satin of six and a basket of one", () => {
    expect(() => twill({ floats: [2, 1, 1] })).toThrow("as many floats under as over");
    expect(() => twill({ floats: [0, 2] })).toThrow(QuantityError);
    expect(() => satin({ ends: 6, move: 2 })).toThrow("no factor with 6");
    expect(() => satin({ ends: 5, move: 4 })).toThrow(QuantityError);
    expect(() => basket({ together: 1 })).toThrow(QuantityError);
    expect(() => averageFloat({ threads: 4, intersections: 0 })).toThrow(QuantityError);
  });
});
