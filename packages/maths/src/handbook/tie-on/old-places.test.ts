import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { oldPlaces } from "./old-places.js";

describe("places of the old warp", () => {
  cited("370 threads, one broken, one too many", byHand(commonPractice, "370"), oldPlaces, [
    { threads: 370, broken: 1, tooMany: 1 },
  ]);
  cited("366 threads, five broken, two too many", byHand(commonPractice, "369"), oldPlaces, [
    { threads: 366, broken: 5, tooMany: 2 },
  ]);

  it("are its threads where nothing is wrong with it", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), (threads) => {
        expect(oldPlaces({ threads, broken: 0, tooMany: 0 })).toBe(threads);
      }),
    );
  });
  it("are refused where more are too many than there are", () => {
    expect(() => oldPlaces({ threads: 1, broken: 0, tooMany: 2 })).toThrow("a whole number of places, 0 or more");
  });
});
