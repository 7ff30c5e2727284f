import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { blossomMerz2012, spaceSavingMats } from "#ci/sources.js";
import { dentsPerInch, endsPerInch, inches } from "../../units/index.js";
import { averageSett } from "./average-sett.js";
import type { Sley } from "./sley-from.js";
import { widthOfSley } from "./width-of-sley.js";

const repeated = <T>(times: number, part: readonly T[]): readonly T[] =>
  Array.from({ length: times }, () => part).flat();

const mats: Sley = {
  dents: [...repeated(3, [6, 12, 6, 3, 12, 3]), 6, 12, 6],
  endsPerDent: [...repeated(3, [1, 0, 1, 0, 1, 0]), 1, 0, 1],
};

describe("the sett in the mean", () => {
  it("of ends sleyed alike is the sett of the reed", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 400 }),
        (reed, each, dents) => {
          const width = widthOfSley({ reed: dentsPerInch(reed), dents: [dents] });
          const sett = averageSett({ ends: dents * each, widthInReed: width }).in(endsPerInch);
          expect(sett).toBeCloseTo(reed * each, 9);
        },
      ),
    );
  });
  it("of 160 ends two to a dent and 144 three, in a reed of 12, is 28 1/2, told by the inch", () => {
    const width = widthOfSley({ reed: dentsPerInch(12), dents: [80, 48] });
    expect(averageSett({ ends: 304, widthInReed: width }).toString()).toBe("28.5 ends/in");
  });
});

describe("width of a sleying", () => {
  cited(
    "thirty dents of a 15-dent reed",
    published(blossomMerz2012, "whole post", "2", "2"),
    widthOfSley,
    [{ reed: dentsPerInch(15), dents: [30] }],
    inches,
  );
  cited(
    "mats with empty places between",
    published(spaceSavingMats, "project page", "15", "15"),
    widthOfSley,
    [{ reed: dentsPerInch(10), dents: mats.dents }],
    inches,
  );
});

describe("the limits of width of sley", () => {
  limits(widthOfSley, ["of one dent is the pitch of the reed", { reed: dentsPerInch(10), dents: [1] }, 0.1, inches], {
    reed: dentsPerInch(0),
    dents: [0],
  });
});
