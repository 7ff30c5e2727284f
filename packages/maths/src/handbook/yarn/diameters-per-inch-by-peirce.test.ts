import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "../../sources/index.js";
import { diametersPerInchByPeirce } from "./diameters-per-inch-by-peirce.js";

describe("diameters per inch by the rule of Peirce", () => {
  cited(
    "36s cotton by the rule of Peirce",
    published(gateTextile, "2007, Q85", "168", "168"),
    diametersPerInchByPeirce,
    [{ cottonCount: 36 }],
    null,
  );

  it("grow with the square root of the count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), (count) => {
        const once = diametersPerInchByPeirce({ cottonCount: count });
        expect(diametersPerInchByPeirce({ cottonCount: 4 * count })).toBeCloseTo(2 * once, 9);
      }),
    );
  });

  it("of ones are 28", () => {
    expect(diametersPerInchByPeirce({ cottonCount: 1 })).toBe(28);
  });

  it("are refused for a count of nothing and for text", () => {
    expect(() => diametersPerInchByPeirce({ cottonCount: 0 })).toThrow("cottonCount");
    expect(() => diametersPerInchByPeirce({ cottonCount: "36" as never })).toThrow("cottonCount");
  });
});
