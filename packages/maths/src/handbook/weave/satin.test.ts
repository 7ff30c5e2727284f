import fc from "fast-check";
import { expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { satin } from "./satin.js";
import { weaveQuantities } from "./weave-quantities.js";

cited(
  "satin of five ends moved by three",
  // Bound at 0, 3, 6 − 5 = 1, 4 and 7 − 5 = 2, counted from 0.
  byHand(commonPractice, ".xxxx,xxx.x,x.xxx,xxxx.,xx.xx"),
  satin,
  [{ ends: 5, move: 3 }],
);

it("a satin has two intersections a thread, floats over all but one, and no two bindings side by side", () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 40 }), fc.integer({ min: 2, max: 38 }), (ends, move) => {
      const shared = Array.from({ length: ends - 1 }, (_, at) => at + 2).some(
        (one) => ends % one === 0 && move % one === 0,
      );
      const fits = move <= ends - 2 && !shared;
      if (!fits) {
        expect(codesOf(satin, { ends, move })).toEqual(["no-answer move"]);
        return;
      }
      const weave = satin({ ends, move });
      const found = weaveQuantities(weave);
      expect([found.ends, found.picks]).toEqual([ends, ends]);
      for (const set of [found.ofEnds, found.ofPicks]) {
        expect(set.intersections).toEqual(Array(ends).fill(2));
        expect([set.averageFloat, set.longestFloat]).toEqual([ends / 2, ends - 1]);
      }
      const bound = weave.map((row) => row.indexOf("."));
      const apart = bound.map((at, pick) => Math.abs(at - (bound.at(pick - 1) ?? 0)));
      for (const one of apart) expect([1, ends - 1]).not.toContain(one);
    }),
  );
});

it("the satin of seven takes a move of five, two less than the ends, and one of a thousand ends 997", () => {
  // 0, 5, 10 − 7 = 3, 8 − 7 = 1, 6, 11 − 7 = 4, 9 − 7 = 2.
  const bound = (ends: number, move: number): readonly number[] => satin({ ends, move }).map((row) => row.indexOf("."));
  expect(bound(7, 5)).toEqual([0, 5, 3, 1, 6, 4, 2]);
  expect(bound(1000, 997).slice(0, 3)).toEqual([0, 997, 994]);
});

it.each([
  ["of four ends", { ends: 4, move: 2 }, ["out-of-range ends"]],
  ["of more than a thousand ends", { ends: 1001, move: 2 }, ["out-of-range ends"]],
  ["moved by one, a twill", { ends: 5, move: 1 }, ["out-of-range move"]],
  ["moved back by one, a twill", { ends: 5, move: 4 }, ["no-answer move"]],
  ["of six ends, which has no move", { ends: 6, move: 2 }, ["no-answer move"]],
])("a satin %s is refused", (_, given, codes) => {
  expect(codesOf(satin, given)).toEqual(codes);
});
