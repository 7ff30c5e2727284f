import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, endsPerInch } from "../../units/index.js";
import { floatFactor } from "./float-factor.js";
import { settByBrierley } from "./sett-by-brierley.js";

describe("the closest sett", () => {
  cited(
    "float factor of a 2/2 twill",
    {
      source: gateTextile,
      at: "2006, Q66, working",
      status: "read",
      prints: "",
      exact: "1.310393403858363267777739304055351282207",
    },
    floatFactor,
    [{ averageFloat: 2, exponent: 0.39 }],
    null,
  );
  it("floats on one another multiply: the factor of a float so many times as long is the product of both", () => {
    const float = fc.integer({ min: 10, max: 90 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(float, float, fc.integer({ min: 1, max: 99 }), (one, other, hundredths) => {
        const factor = (averageFloat: number): number => floatFactor({ averageFloat, exponent: hundredths / 100 });
        const both = factor(one) * factor(other);
        expect(Math.abs(factor(one * other) - both)).toBeLessThanOrEqual(1e-12 * both);
        expect(factor(one + 0.1)).toBeGreaterThan(factor(one));
      }),
    );
  });
  it("has a float factor of the float by the exponent 1, and of its root by one half", () => {
    expect(floatFactor({ averageFloat: 2.25, exponent: 1 })).toBe(2.25);
    expect(floatFactor({ averageFloat: 2.25, exponent: 0.5 })).toBe(1.5);
  });
  it.each([
    ["no float", { averageFloat: 0 }, ["out-of-range averageFloat"]],
    ["an exponent of nothing", { exponent: 0 }, ["out-of-range exponent"]],
    ["a float as a text", { averageFloat: "2" }, ["wrong-kind averageFloat"]],
    ["neither", { averageFloat: undefined, exponent: undefined }, ["missing averageFloat", "missing exponent"]],
  ])("has no float factor for %s", (_, change, codes) => {
    expect(codesOf(floatFactor, { averageFloat: 2, exponent: 0.39, ...change })).toEqual(codes);
  });
  it("by Brierley is 14.14 for ones in plain weave, whatever the exponent", () => {
    const factor = floatFactor({ averageFloat: 1, exponent: 0.39 });
    expect(factor).toBe(1);
    expect(
      settByBrierley({ floatFactor: factor, constant: 200, system: cottonCount, count: cottonCount(1) }).in(
        endsPerInch,
      ),
    ).toBeCloseTo(Math.SQRT2 * 10, 12);
  });
});
