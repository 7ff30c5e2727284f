import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { islamInvoiceMass } from "#ci/sources.js";
import { grams, kilograms, percentLost } from "../../units/index.js";
import { contentFromMasses } from "./content-from-masses.js";

describe("moisture content by two weighings", () => {
  const lot = { mass: kilograms(20_000), dryMass: kilograms(19_200) };
  cited(
    "content of a lot of 20,000 kilograms that is 19,200 dry",
    published(islamInvoiceMass, "problem 2", "4", "4"),
    contentFromMasses,
    [lot],
    percentLost,
  );

  it("is the water, of the whole", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.nat({ max: 900 }), (dry, water) => {
        const content = contentFromMasses({ mass: grams(dry + water), dryMass: grams(dry) }).in(percentLost);
        expect((content * (dry + water)) / 100).toBeCloseTo(water, 9);
      }),
    );
  });

  it("is refused where it grew in drying or nothing was left", () => {
    expect(() => contentFromMasses({ mass: grams(100), dryMass: grams(101) })).toThrow("0 % or more");
    expect(() => contentFromMasses({ mass: grams(100), dryMass: grams(0) })).toThrow("more than 0");
  });
});
