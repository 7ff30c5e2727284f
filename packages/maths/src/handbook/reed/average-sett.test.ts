import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "../../sources/index.js";
import { dentsPerInch, endsPerInch, inches } from "../../units/index.js";
import { widthOfSley } from "./width-of-sley.js";
import { averageSett } from "./average-sett.js";

describe("the sett in the mean", () => {
  cited(
    "304 ends in 16 inches",
    byHand(commonPractice, "19"),
    averageSett,
    [{ ends: 304, widthInReed: inches(16) }],
    endsPerInch,
  );

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
  it("is refused in no width", () => {
    expect(() => averageSett({ ends: 304, widthInReed: inches(0) })).toThrow("more than 0");
  });
});
