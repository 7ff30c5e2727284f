import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { foldedCount, reedWidth, warpLength } from "../handbook/index.js";
import { cottonCount, endsPerInch, inches } from "../units/index.js";
import { digitsEarned } from "./index.js";

describe("the digits an answer has earned", () => {
  // Half an inch in 21 is 4 in of 8 pieces, ÷ 0.828 = 4.83 in of warp; half an inch of waste is half an inch.
  it("are few where a length was measured to the inch, and it is named", () => {
    const { from, to, decimals, limitedBy } = digitsEarned(warpLength, napkins, {
      finishedLength: "21",
      loomWaste: "30",
    });
    expect(from).toBeCloseTo(252.2222 - 4.8309 - 0.5, 3);
    expect(to).toBeCloseTo(252.2222 + 4.8309 + 0.5, 3);
    expect({ decimals, limitedBy }).toEqual({ decimals: -1, limitedBy: "finishedLength" });
  });

  it("are more where it was measured to a hundredth", () => {
    const { decimals, limitedBy } = digitsEarned(warpLength, napkins, { finishedLength: "21.00", loomWaste: "30" });
    expect({ decimals, limitedBy }).toEqual({ decimals: 0, limitedBy: "loomWaste" });
  });

  it("are all of them where everything is counted", () => {
    expect(digitsEarned(reedWidth, { ends: 480, sett: endsPerInch(20) }, {})).toEqual({
      from: 24,
      to: 24,
      decimals: null,
      limitedBy: null,
    });
  });

  it("are few too where nothing was found, to the inch: half an inch at each end of 8 pieces, ÷ 0.828", () => {
    const none = digitsEarned(warpLength, { ...napkins, hemEachEnd: inches(0) }, { hemEachEnd: "0" });
    expect(none.to - none.from).toBeCloseTo((2 * 8) / 0.828, 9);
    expect(none.limitedBy).toBe("hemEachEnd");
  });

  // 4.83 in of doubt, 0.134 yd: to the yard; a sixteenth of an inch of waste, 0.0017 yd: to the tenth by halves.
  it("keep the first figure in doubt, take what is counted as exact, and want a figure that is the input", () => {
    const earned = (written: object): number | null => digitsEarned(warpLength, napkins, written).decimals;
    expect(earned({ pieces: "8" })).toBeNull();
    expect(earned({ finishedLength: "21", pieces: "8" })).toBe(0);
    expect(earned({ loomWaste: "30 0/8" })).toBe(1);
    expect(() => earned({ finishedLength: "22.0" })).toThrow(
      "digitsEarned({ finishedLength }): expected 21 as it was written",
    );
  });

  it("are not told where what was measured is no single number of the input", () => {
    const earned = (written: object): unknown => digitsEarned(warpLength, napkins, written);
    expect(() => earned({ hem: "1" })).toThrow("digitsEarned({ hem }): expected single numbers among pieces,");
    const fold = { counts: [cottonCount(40), cottonCount(80)] };
    expect(() => digitsEarned(foldedCount, fold, { counts: "40" })).toThrow("single numbers among counts");
  });
});
