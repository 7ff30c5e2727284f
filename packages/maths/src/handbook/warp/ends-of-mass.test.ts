import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, ounces } from "../../units/index.js";
import { endsOfMass } from "./ends-of-mass.js";

describe("ends a chain may hold by its mass", () => {
  cited("80 g of ends of 80 tex, 7.5507 m long", byHand(commonPractice, "132"), endsOfMass, [
    { mass: grams(80), massOfEnd: grams("0.60406") },
  ]);

  it("weigh no more than the chain may, and one end more weighs too much", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 900 }), (mass, one) => {
        const ends = endsOfMass({ mass: grams(mass), massOfEnd: grams(one) });
        expect([ends * one <= mass, (ends + 1) * one > mass]).toEqual([true, true]);
      }),
    );
  });

  it("are none where one end weighs more, and refused of nothing", () => {
    expect(endsOfMass({ mass: ounces(1), massOfEnd: ounces(2) })).toBe(0);
    expect(() => endsOfMass({ mass: grams(0), massOfEnd: grams(1) })).toThrow("more than 0");
  });
});
