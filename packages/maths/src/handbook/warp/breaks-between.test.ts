import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { breaksBetween } from "./breaks-between.js";

describe("breaks between pieces", () => {
  cited("a header and fifteen towels", byHand(commonPractice, "15"), breaksBetween, [{ entries: [1, 15] }]);
  cited("of no piece yet", byHand(commonPractice, "0"), breaksBetween, [{ entries: [0] }]);

  it("are one fewer than all that is woven, however it is listed", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(30), { minLength: 1, maxLength: 6 }), (entries) => {
        const all = entries.reduce((total, one) => total + one, 0);
        expect(breaksBetween({ entries })).toBe(all === 0 ? 0 : all - 1);
      }),
    );
  });
  it("are none for one piece, and refused for an empty list", () => {
    expect(breaksBetween({ entries: [1, 0] })).toBe(0);
    expect(() => breaksBetween({ entries: [] })).toThrow("a list of at least one");
  });
});
