import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, yards } from "../../units/index.js";
import { lengthInSteps } from "./length-in-steps.js";

describe("a length in whole steps", () => {
  cited(
    "of 200.2 inches by steps of 27",
    byHand(commonPractice, "216"),
    lengthInSteps,
    [{ needed: inches("200.2"), step: inches(27) }],
    inches,
  );

  it("is the least number of steps that is enough", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 1, max: 200 }), (needed, step) => {
        const length = lengthInSteps({ needed: inches(needed), step: inches(step) }).in(inches);
        expect(length % step).toBe(0);
        expect(length >= needed && length - step < needed).toBe(true);
      }),
    );
  });
  it("adds nothing to a length that is whole steps, told in the unit of the length", () => {
    expect(lengthInSteps({ needed: yards(6), step: inches(27) }).toString()).toBe("6 yd");
  });
  it("is refused for a step of nothing", () => {
    expect(() => lengthInSteps({ needed: yards(6), step: inches(0) })).toThrow("more than 0");
  });
});
