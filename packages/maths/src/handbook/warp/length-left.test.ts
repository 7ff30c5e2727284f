import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, yards } from "../../units/index.js";
import { lengthLeft } from "./length-left.js";

describe("what is left of a length", () => {
  cited(
    "of fifteen yards when 490 inches are taken",
    byHand(commonPractice, "50"),
    lengthLeft,
    [{ length: yards(15), taken: inches(490) }],
    inches,
  );

  it("makes up the length with what was taken", () => {
    const size = fc.integer({ min: 0, max: 5000 });
    fc.assert(
      fc.property(size, size, (left, taken) => {
        expect(lengthLeft({ length: inches(left + taken), taken: inches(taken) }).in(inches)).toBe(left);
      }),
    );
  });
  it("is nothing where all is taken, and is refused where more is", () => {
    expect(lengthLeft({ length: yards(1), taken: inches(36) }).in(inches)).toBe(0);
    expect(() => lengthLeft({ length: yards(1), taken: inches(37) })).toThrow("a length of 0 or more");
  });
});
