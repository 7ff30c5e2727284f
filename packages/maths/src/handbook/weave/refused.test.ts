import { describe, expect, it } from "vitest";
import { faultsOf } from "#ci/faults-of.js";
import { basket, satin, twill, weaveQuantities } from "./index.js";

const PICK = 'Draw every pick of one repeat, for example ["x.", ".x"].';

describe("a weave drawn so that it cannot be read is refused with its place", () => {
  const faults = (weave: unknown): readonly string[] => faultsOf(weaveQuantities, weave);

  it.each<[string, unknown, string]>([
    ["no list", "x.", "weaveQuantities({ weave }): a list of 1 to 1000 picks"],
    ["no pick", [], "weaveQuantities({ weave }): a list of 1 to 1000 picks"],
    [
      "too many picks",
      Array.from({ length: 1001 }, () => "x."),
      "weaveQuantities({ weave }): a list of 1 to 1000 picks",
    ],
    ["a number for a pick", [1], "weaveQuantities({ weave[0] }): a pick over 1 to 1000 ends"],
    ["a number after a pick", ["x.", 1], "weaveQuantities({ weave[1] }): a pick over 2 ends"],
    ["a list for a pick", [["x", "."]], "weaveQuantities({ weave[0] }): a pick over 1 to 1000 ends"],
    ["a list for a later pick", ["x.", ["x", "."]], "weaveQuantities({ weave[1] }): a pick over 2 ends"],
    ["a pick of no ends", [""], "weaveQuantities({ weave[0] }): a pick over 1 to 1000 ends"],
    ["a pick too wide", ["x".repeat(1001)], "weaveQuantities({ weave[0] }): a pick over 1 to 1000 ends"],
    ["a ragged pick over 1000", ["x".repeat(1000), "x"], "weaveQuantities({ weave[1] }): a pick over 1000 ends"],
    ["another mark", ["x.", ".o"], 'weaveQuantities({ weave[1] }): only "x" and "."'],
    ["an end never bound", ["xx.", "x.x"], "weaveQuantities({ weave }): threads that each pass between face and back"],
  ])("%s", (_what, weave, expected) => {
    expect(faults(weave)).toEqual([expected]);
  });

  it("with what to draw instead", () => {
    expect(() => weaveQuantities(["xo"])).toThrow(PICK);
    expect(() => weaveQuantities(["x.x", ".xx"])).toThrow(
      "received end 3 on one side throughout. Draw the whole repeat; a thread that is never bound is in no cloth.",
    );
    expect(() => weaveQuantities(["x.", ".x", "xx"])).toThrow("received pick 3 on one side throughout");
  });
});

describe("a weave by name", () => {
  it("wants its numbers", () => {
    expect(faultsOf(basket, { together: 1 })).toEqual(["basket({ together }): a whole number of threads, 2 or more"]);
    expect(faultsOf(twill, { floats: [0, 101] })).toEqual([
      "twill({ floats[0] }): a whole number of threads, 1 or more",
      "twill({ floats[1] }): a whole number of threads, no more than 100",
    ]);
    expect(faultsOf(satin, { ends: 4, move: 1 })).toEqual([
      "satin({ ends }): a whole number of ends, 5 or more",
      "satin({ move }): a whole number of ends, 2 or more",
    ]);
    expect(faultsOf(satin, { ends: 1001, move: 999 })).toEqual([
      "satin({ ends }): a whole number of ends, no more than 1000",
      "satin({ move }): a whole number of ends, no more than 998",
    ]);
  });

  it("is refused where no such weave is", () => {
    expect(() => satin({ ends: 6, move: 2 })).toThrow(
      "satin({ move }): expected a move from 2 to 4 that shares no factor with 6 ends, received 2. " +
        "A satin of six ends has no such move; those of five have 2 and 3, of eight 3 and 5.",
    );
    expect(() => twill({ floats: [2, 2, 1] })).toThrow(
      "twill({ floats }): expected as many floats under as over, in a repeat of no more than 1000 ends, received 3 floats, 5 ends. " +
        "Write over, under, over, under: [2, 2] or [5, 2, 1, 2].",
    );
  });

  it("counts the threads of ends down the columns and of picks along the rows", () => {
    const { ofEnds, ofPicks } = weaveQuantities(["xxx.", "..xx", ".x.x"]);
    expect(ofEnds).toMatchObject({ intersections: [2, 2, 2, 2], longestFloat: 2, averageFloat: 1.5 });
    expect(ofPicks).toMatchObject({ intersections: [2, 2, 4], longestFloat: 3, averageFloat: 1.5 });
  });
});
