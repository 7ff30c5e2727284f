import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, yards } from "../../units/index.js";
import { lengthsTogether } from "./lengths-together.js";

describe("lengths together", () => {
  cited(
    "two yards and half a yard",
    byHand(commonPractice, "90"),
    lengthsTogether,
    [{ lengths: [yards(2), inches(18)] }],
    inches,
  );

  it("are their sum, in the unit of the first", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(900), { minLength: 1, maxLength: 8 }), (lengths) => {
        const together = lengthsTogether({ lengths: lengths.map((one) => inches(one)) });
        expect(together.in(inches)).toBe(lengths.reduce((total, one) => total + one, 0));
      }),
    );
    expect(lengthsTogether({ lengths: [yards(2), inches(18)] }).toString()).toBe("2.5 yd");
  });
  it("are nothing for one of nothing, and refused for none at all", () => {
    expect(lengthsTogether({ lengths: [inches(0)] }).in(inches)).toBe(0);
    expect(() => lengthsTogether({ lengths: [] })).toThrow("a list of at least one");
  });
});
