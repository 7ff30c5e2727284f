import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, percentOf } from "../../units/index.js";
import { fibreInYarns } from "./fibre-in-yarns.js";

describe("a fibre in several yarns", () => {
  cited(
    "silk in a blend and in a yarn of silk alone",
    byHand(commonPractice, "190"),
    fibreInYarns,
    [{ yarns: [grams(200), grams(50)], shares: [percentOf(70), percentOf(100)] }],
    grams,
  );

  it("is all of the yarns where they are nothing else", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 900 }), (one, other) => {
        const fibre = fibreInYarns({ yarns: [grams(one), grams(other)], shares: [percentOf(100), percentOf(100)] });
        expect(fibre.in(grams)).toBe(one + other);
      }),
    );
  });

  it("is refused for a share of nothing and for lists of two lengths", () => {
    expect(() => fibreInYarns({ yarns: [grams(9)], shares: [percentOf(0)] })).toThrow("more than 0");
    expect(() => fibreInYarns({ yarns: [grams(9)], shares: [percentOf(9), percentOf(9)] })).toThrow(
      "one for each of yarns",
    );
  });
});
