import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { currency } from "../../units/index.js";
import { costOfPackages } from "./cost-of-packages.js";

const EUR = currency("EUR");

describe("packages of several sizes", () => {
  cited(
    "cost: two cones of 15.20, three skeins of 2.35",
    byHand(commonPractice, "37.45"),
    costOfPackages,
    [{ number: [2, 3], price: [EUR("15.20"), EUR("2.35")] }],
    EUR,
  );

  it("cost nothing where none is bought", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9000 }), { minLength: 1, maxLength: 6 }), (prices) => {
        const price = prices.map((cents) => EUR(cents));
        expect(costOfPackages({ number: prices.map(() => 0), price }).in(EUR)).toBe(0);
        expect(costOfPackages({ number: prices.map(() => 1), price }).in(EUR)).toBe(
          prices.reduce((sum, cents) => sum + cents, 0),
        );
      }),
    );
  });
  it("are refused in two currencies, and for lists of two lengths", () => {
    expect(() => costOfPackages({ number: [1, 1], price: [EUR(1), currency("GBP")(1)] })).toThrow("EUR");
    expect(() => costOfPackages({ number: [1], price: [EUR(1), EUR(2)] })).toThrow("one for each of");
    expect(() => costOfPackages({ number: [0.5], price: [EUR(1)] })).toThrow("whole");
  });
});
