import { expect, it } from "vitest";
import { satin } from "./satin.js";
import { weaveQuantities } from "./weave-quantities.js";

it.each([
  [5, 2],
  [5, 3],
  [7, 2],
  [8, 3],
  [8, 5],
])("a satin of %i ends moved by %i has two intersections a thread and floats over all but one", (ends, move) => {
  const found = weaveQuantities(satin({ ends, move }));
  expect([found.ends, found.picks]).toEqual([ends, ends]);
  for (const set of [found.ofEnds, found.ofPicks]) {
    expect(set.intersections).toEqual(Array(ends).fill(2));
    expect([set.averageFloat, set.longestFloat]).toEqual([ends / 2, ends - 1]);
  }
});

it("a satin of six is refused, and a move that makes a twill", () => {
  expect(() => satin({ ends: 6, move: 2 })).toThrow("no factor with 6");
  expect(() => satin({ ends: 5, move: 4 })).toThrow("move");
});
