import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, diametersPerInch } from "../../units/index.js";
import { diametersByPeirce } from "./diameters-by-peirce.js";

describe("diameters per inch by the rule of Peirce", () => {
  cited(
    "36s cotton by the rule of Peirce",
    published(gateTextile, "2007, Q85", "168", "168"),
    diametersByPeirce,
    [{ count: cottonCount(36) }],
    diametersPerInch,
  );

  it("grow with the square root of the count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), (count) => {
        const once = diametersByPeirce({ count: cottonCount(count) }).in(diametersPerInch);
        expect(diametersByPeirce({ count: cottonCount(4 * count) }).in(diametersPerInch)).toBeCloseTo(2 * once, 9);
      }),
    );
  });

  it("of ones are 28", () => {
    expect(diametersByPeirce({ count: cottonCount(1) }).in(diametersPerInch)).toBe(28);
  });

  it("are refused for a count of nothing and for text", () => {
    expect(() => diametersByPeirce({ count: cottonCount(0) })).toThrow("count");
    expect(() => diametersByPeirce({ count: "36" as never })).toThrow("count");
  });
});
