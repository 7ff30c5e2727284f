import fc from "fast-check";
import { expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { basket } from "./basket.js";
import { weaveQuantities } from "./weave-quantities.js";

// Two ends over and two under, for two picks; the next two picks the other way.
cited("basket of two together", byHand(commonPractice, "xx..,xx..,..xx,..xx"), basket, [{ together: 2 }]);

it("a basket repeats on twice as many threads as go together, each with two intersections", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 20 }), (together) => {
      const found = weaveQuantities(basket({ together }));
      expect([found.ends, found.picks]).toEqual([2 * together, 2 * together]);
      for (const set of [found.ofEnds, found.ofPicks]) {
        expect(set.intersections).toEqual(Array(2 * together).fill(2));
        expect([set.averageFloat, set.longestFloat]).toEqual([together, together]);
      }
    }),
  );
});

it("a basket of 500 together repeats on a thousand ends, the most that are drawn", () => {
  const most = basket({ together: 500 });
  expect([most.length, most[0], most[999]]).toEqual([
    1000,
    `${"x".repeat(500)}${".".repeat(500)}`,
    `${".".repeat(500)}${"x".repeat(500)}`,
  ]);
  expect(codesOf(basket, { together: 501 })).toEqual(["out-of-range together"]);
});

it("a basket of one is refused, for it is plain weave", () => {
  expect(codesOf(basket, { together: 1 })).toEqual(["out-of-range together"]);
  expect(codesOf(basket, { together: 2.5 })).toEqual(["not-whole together"]);
});
