import { describe, expect, it } from "vitest";
import { allUnits } from "#ci/inputs.js";
import { SIBLINGS } from "./sibling-units.js";

describe.each(Object.entries(SIBLINGS))("the units of %s that are mixed up", (dimension, siblings) => {
  it.each(siblings)("hold %s at the size the library gives it", (symbol, over, under) => {
    const own = allUnits.filter((unit) => unit.dimension === dimension && unit.symbol === symbol);
    expect(own.map(({ scale }) => scale)).toEqual([[over, under]]);
  });
});
