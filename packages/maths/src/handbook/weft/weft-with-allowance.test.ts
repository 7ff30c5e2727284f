import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "../../sources/index.js";
import { inches, percentAdded, percentLost, yards } from "../../units/index.js";
import { weftWithAllowance } from "./weft-with-allowance.js";

describe("weft with its allowance", () => {
  cited(
    "4896 inches, 5 % added",
    byHand(commonPractice, "5140.8"),
    weftWithAllowance,
    [{ weft: inches(4896), allowance: percentAdded(5) }],
    inches,
  );

  it("is the weft itself where nothing is allowed, and twice it where as much again is", () => {
    fc.assert(
      fc.property(fc.nat(9000), (weft) => {
        expect(weftWithAllowance({ weft: yards(weft), allowance: percentAdded(0) }).in(yards)).toBe(weft);
        expect(weftWithAllowance({ weft: yards(weft), allowance: percentAdded(100) }).in(yards)).toBe(2 * weft);
      }),
    );
  });
  it("is refused where the percentage is one lost", () => {
    expect(() => weftWithAllowance({ weft: yards(2), allowance: percentLost(5) as never })).toThrow("percentAdded");
  });
});
