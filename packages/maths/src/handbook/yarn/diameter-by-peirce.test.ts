import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "../../sources/index.js";
import { cottonCount, metricCount } from "../../units/index.js";
import { diametersPerInchByPeirce } from "./diameters-per-inch-by-peirce.js";
import { diameterByPeirce } from "./diameter-by-peirce.js";

describe("the diameter of a thread by Peirce", () => {
  cited("of 2-ply of 8 cotton", byHand(commonPractice, "127/280"), diameterByPeirce, [{ cottonCount: 4 }]);
  cited("of a count of 100", byHand(commonPractice, "127/1400"), diameterByPeirce, [{ cottonCount: 100 }]);

  it("is what one of the threads that lie side by side in an inch takes", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), (quarters) => {
        const cottonCount = quarters / 4;
        const across = diameterByPeirce({ cottonCount }) * diametersPerInchByPeirce({ cottonCount });
        expect(across).toBeCloseTo(25.4, 9);
      }),
    );
  });
  it("of 2-ply of 3 metric is nearly a millimetre", () => {
    expect(diameterByPeirce({ cottonCount: metricCount("1.5").in(cottonCount) })).toBeCloseTo(0.9638, 4);
  });
  it("is refused for a count of nothing", () => {
    expect(() => diameterByPeirce({ cottonCount: 0 })).toThrow("more than 0");
  });
});
