import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { placesToTie } from "./places-to-tie.js";

describe("places that take a new end", () => {
  cited("two of 370 left empty, one put in", byHand(commonPractice, "369"), placesToTie, [
    { places: 370, leftEmpty: 2, mended: 1 },
  ]);

  it("are those of the old warp where none is left empty and none put in", () => {
    fc.assert(
      fc.property(fc.nat(4000), (places) => {
        expect(placesToTie({ places, leftEmpty: 0, mended: 0 })).toBe(places);
      }),
    );
  });
  it("may be none, and are refused where more are left empty than there are", () => {
    expect(placesToTie({ places: 3, leftEmpty: 3, mended: 0 })).toBe(0);
    expect(() => placesToTie({ places: 3, leftEmpty: 4, mended: 0 })).toThrow("a whole number of places, 0 or more");
  });
});
