import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, ounces, pounds } from "../../units/index.js";
import { yarnMissing } from "./yarn-missing.js";

describe("yarn missing", () => {
  cited(
    "of 21 1/2 ounces with 8 on hand",
    byHand(commonPractice, "13.5"),
    yarnMissing,
    [{ onHand: ounces(8), needed: ounces("21.5") }],
    ounces,
  );
  cited(
    "with more on hand than is needed",
    byHand(commonPractice, "0"),
    yarnMissing,
    [{ onHand: ounces(30), needed: ounces("21.5") }],
    ounces,
  );

  it("is told in the unit of what is on hand", () => {
    expect(yarnMissing({ onHand: ounces(8), needed: pounds(2) }).toString()).toBe("24 oz");
  });
  it("is never less than what is needed when put to what is on hand", () => {
    fc.assert(
      fc.property(fc.nat(900), fc.nat(900), (onHand, needed) => {
        const missing = yarnMissing({ onHand: grams(onHand), needed: grams(needed) }).in(grams);
        expect(missing + onHand).toBe(Math.max(onHand, needed));
      }),
    );
  });
  it("is refused where less than nothing is on hand", () => {
    expect(() => yarnMissing({ onHand: grams(-1), needed: grams(5) })).toThrow("0 or more");
  });
});
