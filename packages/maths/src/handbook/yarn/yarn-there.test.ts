import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, ounces, pounds, yards, yardsPerPound } from "../../units/index.js";
import { yarnLength } from "./yarn-length.js";
import { yarnThere } from "./yarn-there.js";

describe("yarn that is there", () => {
  cited(
    "a pound and three ounces",
    byHand(commonPractice, "19"),
    yarnThere,
    [{ onHand: [pounds(1), ounces(3)] }],
    ounces,
  );

  it("at 3360 yards to the pound is 3990 yards in that pound and three ounces", () => {
    const mass = yarnThere({ onHand: [pounds(1), ounces(3)] });
    expect(yarnLength({ mass, count: yardsPerPound(3360) }).in(yards)).toBe(3990);
  });
  it("is the sum of its parts", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(900), { minLength: 1, maxLength: 6 }), (parts) => {
        const there = yarnThere({ onHand: parts.map((one) => grams(one)) });
        expect(there.in(grams)).toBe(parts.reduce((total, one) => total + one, 0));
      }),
    );
  });
  it("may be nothing, and is refused for a list of none", () => {
    expect(yarnThere({ onHand: [grams(0)] }).in(grams)).toBe(0);
    expect(() => yarnThere({ onHand: [] })).toThrow("a list of at least one");
  });
});
