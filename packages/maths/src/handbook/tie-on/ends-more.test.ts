import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { endsMore } from "./ends-more.js";

describe("ends more", () => {
  cited("264 than 240", byHand(commonPractice, "24"), endsMore, [{ ends: 264, than: 240 }]);
  cited("240 than 264", byHand(commonPractice, "0"), endsMore, [{ ends: 240, than: 264 }]);

  it("are none at one side or the other, and together the difference", () => {
    fc.assert(
      fc.property(fc.nat(900), fc.nat(900), (ends, than) => {
        const [more, fewer] = [endsMore({ ends, than }), endsMore({ ends: than, than: ends })];
        expect(Math.min(more, fewer)).toBe(0);
        expect(more - fewer + 0).toBe(ends - than);
      }),
    );
  });
  it("are none where both are alike, and refused for fewer than none", () => {
    expect(endsMore({ ends: 368, than: 368 })).toBe(0);
    expect(() => endsMore({ ends: -1, than: 0 })).toThrow("0 or more");
  });
});
