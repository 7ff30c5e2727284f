import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { plainWeave } from "./plain-weave.js";
import { twill } from "./twill.js";
import { weaveQuantities } from "./weave-quantities.js";

describe("a twill", () => {
  // Over three and under one, then the pick before moved on by one end.
  cited("twill of three over and one under", byHand(commonPractice, "xxx.,.xxx,x.xx,xx.x"), twill, [
    { floats: [3, 1] },
  ]);

  it("repeats on the sum of the floats, has an intersection for each, and moves every pick on by one end", () => {
    const pair = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }));
    fc.assert(
      fc.property(fc.array(pair, { minLength: 1, maxLength: 4 }), (pairs) => {
        const floats = pairs.flat();
        const weave = twill({ floats });
        const { ends, picks, ofEnds, ofPicks } = weaveQuantities(weave);
        const all = floats.reduce((total, one) => total + one, 0);
        expect([ends, picks]).toEqual([all, all]);
        for (const set of [ofEnds, ofPicks]) {
          expect(set.intersections).toEqual(Array(all).fill(floats.length));
          expect(set.longestFloat).toBe(Math.max(...floats));
        }
        weave.forEach((row, pick) => {
          const before = weave.at(pick - 1) ?? "";
          expect(row).toBe(before.slice(-1) + before.slice(0, -1));
        });
      }),
    );
  });

  it("of one over and one under is plain weave, and of a thousand ends the widest", () => {
    expect(twill({ floats: [1, 1] })).toEqual(plainWeave);
    const hundreds = Array.from({ length: 10 }, () => 100);
    expect(twill({ floats: hundreds })).toHaveLength(1000);
    expect(codesOf(twill, { floats: [...hundreds, 1, 1] })).toEqual(["wrong-kind floats"]);
  });

  it.each([
    ["of three floats", [2, 1, 1], ["wrong-kind floats"]],
    ["with a float over nothing", [2, 0], ["out-of-range floats.1"]],
    ["with a float over more than a hundred", [101, 1], ["out-of-range floats.0"]],
    ["without floats", [], ["empty floats"]],
  ])("%s is refused", (_, floats, codes) => {
    expect(codesOf(twill, { floats })).toEqual(codes);
  });
});

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
});
