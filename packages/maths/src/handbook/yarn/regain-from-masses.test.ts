import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited, published } from "#ci/cited.js";
import { commonPractice, islamInvoiceMass } from "#ci/sources.js";
import { grams, kilograms, percentAdded, percentLost } from "../../units/index.js";
import { contentFromMasses } from "./content-from-masses.js";
import { regainFromContent } from "./regain-from-content.js";
import { regainFromMasses } from "./regain-from-masses.js";

describe("water by two weighings", () => {
  const lot = { mass: kilograms(20_000), dryMass: kilograms(19_200) };
  cited(
    "regain of 20,000 kilograms that are 19,200 dry",
    published(islamInvoiceMass, "problem 2", "", "25/6"),
    regainFromMasses,
    [lot],
    percentAdded,
  );
  cited(
    "regain of 114 grams that are 100 dry",
    byHand(commonPractice, "14"),
    regainFromMasses,
    [{ mass: grams(114), dryMass: grams(100) }],
    percentAdded,
  );

  it("is the same water told of the dry mass and of the whole", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.nat({ max: 900 }), (dry, water) => {
        const given = { mass: grams(dry + water), dryMass: grams(dry) };
        const [regain, content] = [regainFromMasses(given).in(percentAdded), contentFromMasses(given)];
        expect(regainFromContent({ content }).in(percentAdded)).toBeCloseTo(regain, 9);
        expect(regain).toBeGreaterThanOrEqual(content.in(percentLost));
      }),
    );
  });

  it("is none where nothing was lost, and is refused where it grew in drying or nothing was left", () => {
    expect(regainFromMasses({ mass: grams(100), dryMass: grams(100) }).in(percentAdded)).toBe(0);
    const grown = { mass: grams(100), dryMass: grams(101) };
    expect(() => regainFromMasses(grown)).toThrow("0 % or more");
    expect(() => contentFromMasses(grown)).toThrow("0 % or more");
    expect(() => contentFromMasses({ mass: grams(100), dryMass: grams(0) })).toThrow("more than 0");
  });
});
