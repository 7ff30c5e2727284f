import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches, percentLost } from "../../units/index.js";
import { warpLength } from "./warp-length.js";
import { wovenInOrder } from "./woven-in-order.js";
import { wovenLength } from "./woven-length.js";
import { warpForOrder } from "./warp-for-order.js";

describe("warp for all that is woven on it", () => {
  cited(
    "175 inches on the loom, 8 % taken up, 10 inches of waste",
    byHand(commonPractice, "4605/23"),
    warpForOrder,
    [{ woven: inches(175), takeUp: percentLost(8), fringes: inches(0), loomWaste: inches(10) }],
    inches,
  );
  cited(
    "186 cm on the loom, 7 % taken up, with fringe and waste",
    byHand(commonPractice, "317"),
    warpForOrder,
    [{ woven: centimetres(186), takeUp: percentLost(7), fringes: centimetres(72), loomWaste: centimetres(45) }],
    centimetres,
  );

  it("of pieces all alike is that of the formula for pieces", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 90 }), (pieces, finished) => {
        const size = { finishedLength: inches(finished), hemEachEnd: inches(1), loomToFinished: percentLost(10) };
        const common = { takeUp: percentLost(8), loomWaste: inches(27) };
        const woven = wovenInOrder({ number: [pieces], wovenLength: [wovenLength(size)] });
        const warp = warpForOrder({ ...common, woven, fringes: inches(0) });
        expect(warp.in(inches)).toBeCloseTo(warpLength({ ...common, ...size, pieces }).in(inches), 9);
      }),
    );
  });
  it("of 9 pieces of 17.5 inches, a tenth lost, holds 175 inches of cloth to the last digit", () => {
    const size = { finishedLength: inches(16), hemEachEnd: inches("0.75"), loomToFinished: percentLost(10) };
    expect(wovenInOrder({ number: [9], wovenLength: [wovenLength(size)] }).value).toBe("175");
  });
  it("is refused where nothing is woven", () => {
    const nothing = { woven: inches(0), takeUp: percentLost(8), fringes: inches(0), loomWaste: inches(10) };
    expect(() => warpForOrder(nothing)).toThrow("more than 0");
  });
});
