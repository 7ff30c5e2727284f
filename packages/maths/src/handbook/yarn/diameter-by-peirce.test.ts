import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { explain, solveFor } from "../../index.js";
import { cottonCount, diametersPerInch, inches, metricCount, millimetres, tex } from "../../units/index.js";
import { diametersByPeirce } from "./diameters-by-peirce.js";
import { diameterByPeirce } from "./diameter-by-peirce.js";

describe("the diameter of a thread by Peirce", () => {
  cited(
    "of 2-ply of 8 cotton",
    byHand(commonPractice, "127/280"),
    diameterByPeirce,
    [{ count: cottonCount(4) }],
    millimetres,
  );
  cited(
    "of a count of 100",
    byHand(commonPractice, "127/1400"),
    diameterByPeirce,
    [{ count: cottonCount(100) }],
    millimetres,
  );

  it("is what one of the threads that lie side by side in an inch takes", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), (quarters) => {
        const count = quarters / 4;
        const across = diameterByPeirce({ count: cottonCount(count) }).in(inches);
        expect(across * diametersByPeirce({ count: cottonCount(count) }).in(diametersPerInch)).toBeCloseTo(1, 12);
      }),
    );
  });
  it("of 2-ply of 3 metric is nearly a millimetre", () => {
    // 25.4 ÷ (28 × √(1.5 × 1000 ÷ 0.9144 ÷ 840 × 0.45359237)) = 0.963839…
    expect(diameterByPeirce({ count: metricCount("1.5") }).in(millimetres)).toBeCloseTo(0.96384, 5);
  });
  it("shows the constant as printed, and the units it holds for, whatever the count comes in", () => {
    const { conversions, steps, result } = explain(diameterByPeirce, { count: metricCount("1.5") });
    expect(conversions).toEqual([{ name: "count", text: "1.5 Nm × 0.590541247448 ≈ 0.885812 Ne" }]);
    expect(steps[0]).toMatchObject({
      formula: "1 ÷ (28 × √count)",
      numbers: "1 ÷ (28 × √(0.885812 Ne))",
      unit: "in",
    });
    expect(steps[0]?.value).toBe("0.0379465 in");
    expect(result.value).toBe("0.96384 mm");
  });
  it("turned round gives the count of a thread in the system of the rule", () => {
    const count = solveFor(diameterByPeirce, "count", "diameter")({ diameter: millimetres("12.7") });
    // 1 ÷ 28 ÷ 1/2 squared
    expect(count).toMatchObject({ unit: "cottonCount" });
    expect(count.in(cottonCount)).toBeCloseTo(1 / 196, 14);
  });
  it("is refused for a count of nothing, a bare number and a direct count", () => {
    expect(() => diameterByPeirce({ count: cottonCount(0) })).toThrow("more than 0");
    // @ts-expect-error [ts2322] a bare number is not an indirect count
    expect(() => diameterByPeirce({ count: 4 })).toThrow("expected an indirect count");
    // @ts-expect-error [ts2322] tex is a direct count
    expect(() => diameterByPeirce({ count: tex(30) })).toThrow("expected an indirect count");
  });
});
