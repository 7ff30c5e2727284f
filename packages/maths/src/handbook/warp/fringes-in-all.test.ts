import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches } from "../../units/index.js";
import { fringesInAll } from "./fringes-in-all.js";

describe("warp in fringes", () => {
  cited(
    "three of 12 cm at each end, two of 1.5 cm",
    byHand(commonPractice, "78"),
    fringesInAll,
    [{ number: [3, 2], fringeEachEnd: [centimetres(12), centimetres("1.5")] }],
    centimetres,
  );

  it("counts both ends of each piece, and no piece twice", () => {
    fc.assert(
      fc.property(fc.nat(40), fc.nat(40), (number, fringe) => {
        expect(fringesInAll({ number: [number], fringeEachEnd: [inches(fringe)] }).in(inches)).toBe(
          2 * number * fringe,
        );
      }),
    );
  });
  it("is nothing where no piece has any, and refused where it is less", () => {
    expect(fringesInAll({ number: [9], fringeEachEnd: [inches(0)] }).in(inches)).toBe(0);
    expect(() => fringesInAll({ number: [9], fringeEachEnd: [inches(-1)] })).toThrow("0 or more");
  });
});
