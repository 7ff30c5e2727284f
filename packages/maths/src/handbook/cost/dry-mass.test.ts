import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, percentAdded } from "../../units/index.js";
import { waterInYarn } from "../yarn/index.js";
import { dryMass } from "./dry-mass.js";

describe("dry mass", () => {
  cited(
    "linen at 12 %",
    byHand(commonPractice, "2500/112"),
    dryMass,
    [{ mass: grams(25), regain: percentAdded(12) }],
    grams,
  );

  it("is what is left without the water", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 30 }), (mass, regain) => {
        const input = { mass: grams(mass), regain: percentAdded(regain) };
        expect(dryMass(input).in(grams) + waterInYarn(input).in(grams)).toBeCloseTo(mass, 9);
      }),
    );
  });

  it("is all of it where there is no water, and refused of nothing", () => {
    expect(dryMass({ mass: grams(25), regain: percentAdded(0) }).in(grams)).toBe(25);
    expect(() => dryMass({ mass: grams(0), regain: percentAdded(8) })).toThrow("more than 0");
  });
});
