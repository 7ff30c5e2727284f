import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { percentAdded, percentLost } from "../../units/index.js";
import { combinedAddition } from "./combined-addition.js";

describe("two percentages added one after the other", () => {
  for (const [title, first, second, exact] of [
    ["a tenth and a tenth", 10, 10, "21"],
    ["15 % for shrinkage and 8 % for crimp", 15, 8, "24.2"],
    ["a doubling of a doubling", 100, 100, "300"],
  ] as const) {
    const input = { first: percentAdded(first), second: percentAdded(second) };
    cited(title, byHand(commonPractice, exact), combinedAddition, [input], percentAdded);
  }

  it("are more than their sum unless one is nothing, and no order of them matters", () => {
    fc.assert(
      fc.property(fc.nat({ max: 200 }), fc.nat({ max: 200 }), (a, b) => {
        const both = combinedAddition({ first: percentAdded(a), second: percentAdded(b) }).in(percentAdded);
        expect(both).toBeCloseTo(a + b + (a * b) / 100, 9);
        expect(both).toBe(combinedAddition({ first: percentAdded(b), second: percentAdded(a) }).in(percentAdded));
      }),
    );
  });

  it("are refused as losses", () => {
    const lost = { first: percentLost(10) as never, second: percentAdded(10) };
    expect(() => combinedAddition(lost)).toThrow("percentAdded");
  });
});
