import { describe, expect, it } from "vitest";
import { allUnits } from "#ci/inputs.js";
import { feet, inches, linenCount, percentLost, yards } from "../units/index.js";
import { mixedUp } from "../units/mixed-up.js";
import { isCalled, takenFor, toldTo } from "./mixed-up.js";

const dimensions = [...new Set(allUnits.map(({ dimension }) => dimension))];
const listed = dimensions.filter((kind) =>
  allUnits.some((unit) => unit.dimension === kind && takenFor(unit).length > 0),
);

describe("the units a reader mixes up", () => {
  it("are those of five kinds, by their names and at their sizes", () => {
    const sizes = mixedUp.kinds.map((all) => all.map(({ name, symbol, scale }) => ({ name, symbol, scale })));
    expect(mixedUp.kinds.map(([one]) => one && takenFor(one))).toEqual(sizes);
    expect(listed).toHaveLength(sizes.length);
    expect(takenFor(percentLost)).toEqual([]);
  });

  it("are the library's own, two or more of one kind, no two of one size", () => {
    for (const all of mixedUp.kinds) {
      expect(new Set(all.map(({ scale }) => String(scale))).size).toBe(all.length);
      expect(new Set(all.map(({ dimension }) => dimension)).size).toBe(1);
      expect(all.length).toBeGreaterThan(1);
      for (const unit of all) expect(allUnits).toContain(unit);
    }
  });

  it("tell a number of things to an inch and to a centimetre, each taken for the other", () => {
    expect(toldTo().map((pair) => pair.map(({ symbol }) => symbol))).toEqual([
      ["in", "cm"],
      ["cm", "in"],
    ]);
  });

  it.each([
    ["in.", inches],
    ["Inch", inches],
    ['"', inches],
    ["foot", feet],
    ["′", feet],
    ["yds", yards],
    ["lea", linenCount],
    ["linen count", linenCount],
  ])("are called %s too", (word, unit) => {
    expect(isCalled(word, unit)).toBe(true);
    expect(isCalled(word, percentLost)).toBe(false);
  });
});
