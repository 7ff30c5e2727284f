import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { currency, grams, ounces, pounds } from "../../units/index.js";
import { cheapestPackages } from "./cheapest-packages.js";

const EUR = currency("EUR");
const euros = (...prices: readonly (number | string)[]) => prices.map((price) => EUR(price));

/** Every mixture there is, tried one after the other; the least cost in cents. */
function leastOfAll(needed: number, sizes: readonly (readonly [mass: number, cents: number])[]): number {
  const [first, ...others] = sizes;
  if (first === undefined) return needed > 0 ? Number.POSITIVE_INFINITY : 0;
  let least = Number.POSITIVE_INFINITY;
  for (let number = 0; number <= Math.ceil(Math.max(needed, 0) / first[0]); number += 1)
    least = Math.min(least, number * first[1] + leastOfAll(needed - number * first[0], others));
  return least;
}

describe("packages of several sizes at the least cost", () => {
  // 180 g of 4.50 for 50 g, 8 for 100: 4 × 4.50 = 18, 2 × 8 = 16, 2 × 4.50 + 8 = 17.
  cited("180 grams of 50 at 4.50 and 100 at 8", byHand(commonPractice, "0,2"), cheapestPackages, [
    { needed: grams(180), packageMass: [grams(50), grams(100)], price: euros("4.50", 8) },
  ]);
  // 20 oz: 3 × 14.50 = 43.50, 2 × 26 = 52, 14.50 + 26 = 40.50.
  it("are a small one beside the large where that covers it", () => {
    const sold = { packageMass: [ounces(8), pounds(1)], price: euros("14.50", 26) };
    expect(cheapestPackages({ needed: ounces(20), ...sold })).toEqual([1, 1]);
    // 25 oz: 2 × 26 = 52; 2 × 14.50 + 26 = 55.
    expect(cheapestPackages({ needed: ounces(25), ...sold })).toEqual([0, 2]);
    expect(cheapestPackages({ needed: ounces(0), ...sold })).toEqual([0, 0]);
  });
  it("are small ones alone where the large is dearer for what is on it", () => {
    // 180 g: 2 × 12 = 24 for 200 g, 4 × 5 = 20 for 200 g.
    const sold = { packageMass: [grams(100), grams(50)], price: euros(12, 5) };
    expect(cheapestPackages({ needed: grams(180), ...sold })).toEqual([0, 4]);
  });
  it("are the fewest of mixtures that cost the same", () => {
    const sold = { packageMass: [grams(50), grams(100), grams(250)], price: euros(4, 8, 20) };
    expect(cheapestPackages({ needed: grams(400), ...sold })).toEqual([1, 1, 1]);
  });
  it("hold the most yarn of mixtures that cost the same and are as many", () => {
    const sold = { packageMass: [grams(50), grams(60)], price: euros(4, 4) };
    expect(cheapestPackages({ needed: grams(40), ...sold })).toEqual([0, 1]);
  });
  it("ask for none more for the last digit of a quotient, and for one more for the nineteenth", () => {
    const sold = { packageMass: [grams("33.33333333333333333333333333333333")], price: euros(4) };
    expect(cheapestPackages({ needed: grams("33.33333333333333333333333333333334"), ...sold })).toEqual([1]);
    expect(cheapestPackages({ needed: grams("33.33333333333333334"), ...sold })).toEqual([2]);
  });

  it("cost what the cheapest of all mixtures costs", () => {
    const size = fc.tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 1, max: 900 }));
    fc.assert(
      fc.property(fc.nat(160), fc.array(size, { minLength: 1, maxLength: 4 }), (needed, sizes) => {
        const numbers = cheapestPackages({
          needed: grams(needed),
          packageMass: sizes.map(([mass]) => grams(mass)),
          price: sizes.map(([, cents]) => EUR(cents)),
        });
        const total = (of: 0 | 1) => numbers.reduce((sum, number, at) => sum + number * (sizes[at]?.[of] ?? 0), 0);
        expect(total(0)).toBeGreaterThanOrEqual(needed);
        expect(total(1)).toBe(leastOfAll(needed, sizes));
      }),
    );
  });
  it("are one where one holds all that is needed, and another for the least more", () => {
    const sold = { packageMass: [grams(50)], price: euros(4) };
    expect(cheapestPackages({ needed: grams(50), ...sold })).toEqual([1]);
    expect(cheapestPackages({ needed: grams("50.000000001"), ...sold })).toEqual([2]);
  });
  it("are refused for lists of two lengths, for two currencies, and where too many would have to be tried", () => {
    const sold = { needed: ounces(20), packageMass: [ounces(8), ounces(4)], price: euros(1, 2) };
    expect(codesOf(cheapestPackages, { ...sold, packageMass: [ounces(8)] })).toEqual(["wrong-kind price"]);
    expect(codesOf(cheapestPackages, { ...sold, price: [EUR(1), currency("GBP")(1)] })).toEqual(["wrong-kind price"]);
    expect(codesOf(cheapestPackages, { ...sold, price: [EUR(1), EUR(0)] })).toEqual(["out-of-range price.1"]);
    expect(codesOf(cheapestPackages, { ...sold, needed: ounces(-1), packageMass: [] })).toEqual([
      "out-of-range needed",
      "empty packageMass",
    ]);
    const unlike = ["0.0101", "0.0103", "0.0107", "0.0109"];
    const many = {
      needed: pounds(1000),
      packageMass: unlike.map((mass) => ounces(mass)),
      price: unlike.map((price) => EUR(price)),
    };
    expect(codesOf(cheapestPackages, many)).toEqual(["out-of-range packageMass"]);
    expect(() => cheapestPackages(many)).toThrow("at most 20000 mixtures");
  });
});
