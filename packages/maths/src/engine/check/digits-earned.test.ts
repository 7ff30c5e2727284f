import { describe, expect, it } from "vitest";
import { reedWidth, warpLength } from "../../handbook/index.js";
import { endsPerInch, inches, percentLost } from "../../units/index.js";
import { digitsEarned } from "./index.js";

const napkins = {
  pieces: 8,
  finishedLength: inches(21),
  hemEachEnd: inches(1),
  loomToFinished: percentLost(10),
  takeUp: percentLost(8),
  loomWaste: inches(30),
};

describe("the digits an answer has earned", () => {
  // Half an inch in 21 is 4 in of 8 pieces, ÷ 0.828 = 4.83 in of warp; half an inch of waste is half an inch.
  it("are few where a length was measured to the inch, and it is named", () => {
    const { from, to, decimals, limitedBy } = digitsEarned(warpLength, napkins, {
      finishedLength: "21",
      loomWaste: "30",
    });
    expect(from).toBeCloseTo(252.2222 - 4.8309 - 0.5, 3);
    expect(to).toBeCloseTo(252.2222 + 4.8309 + 0.5, 3);
    expect({ decimals, limitedBy }).toEqual({ decimals: -2, limitedBy: "finishedLength" });
  });

  it("are more where it was measured to a hundredth", () => {
    const { decimals, limitedBy } = digitsEarned(warpLength, napkins, { finishedLength: "21.00", loomWaste: "30" });
    expect({ decimals, limitedBy }).toEqual({ decimals: -1, limitedBy: "loomWaste" });
  });

  it("are all of them where everything is counted", () => {
    expect(digitsEarned(reedWidth, { ends: 480, sett: endsPerInch(20) }, {})).toEqual({
      ...{ from: 24, to: 24, decimals: null, limitedBy: null },
    });
  });
});
