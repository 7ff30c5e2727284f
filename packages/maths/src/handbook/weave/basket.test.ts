import { expect, it } from "vitest";
import { basket } from "./basket.js";
import { weaveQuantities } from "./weave-quantities.js";

it.each([2, 3, 4])("a basket of %i together repeats on twice as many, each with two intersections", (together) => {
  const found = weaveQuantities(basket({ together }));
  expect([found.ends, found.picks]).toEqual([2 * together, 2 * together]);
  for (const set of [found.ofEnds, found.ofPicks]) {
    expect(set.intersections).toEqual(Array(2 * together).fill(2));
    expect([set.averageFloat, set.longestFloat]).toEqual([together, together]);
  }
});

it("a basket of one is refused, for it is plain weave", () => {
  expect(() => basket({ together: 1 })).toThrow("together");
});
