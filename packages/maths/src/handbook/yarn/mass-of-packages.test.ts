import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, ounces, pounds } from "../../units/index.js";
import { massOfPackages } from "./mass-of-packages.js";

describe("yarn on packages", () => {
  cited(
    "a cone and a half of a pound, two skeins of 2 ounces",
    byHand(commonPractice, "28"),
    massOfPackages,
    [{ number: [1.5, 2], packageMass: [pounds(1), ounces(2)] }],
    ounces,
  );

  it("of whole packages is their number times the mass of one", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 900 }), (number, mass) => {
        expect(massOfPackages({ number: [number], packageMass: [grams(mass)] }).in(grams)).toBe(number * mass);
      }),
    );
  });
  it("may be part of one, and is refused for none at all and for one of nothing", () => {
    expect(massOfPackages({ number: [0.25], packageMass: [pounds(1)] }).in(ounces)).toBe(4);
    expect(() => massOfPackages({ number: [0], packageMass: [pounds(1)] })).toThrow("more than 0");
    expect(() => massOfPackages({ number: [1], packageMass: [pounds(0)] })).toThrow("more than 0");
  });
});
