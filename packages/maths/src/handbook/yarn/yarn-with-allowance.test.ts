import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited, published } from "#ci/cited.js";
import { commonPractice, creativeThreadsWeft } from "#ci/sources.js";
import { inches, metres, percentAdded, percentLost, yards } from "../../units/index.js";
import { yarnWithAllowance } from "./yarn-with-allowance.js";

describe("yarn with its allowance", () => {
  cited(
    "1760 picks over 50 centimetres, 10 % added",
    published(creativeThreadsWeft, "worked example", "968", "968"),
    yarnWithAllowance,
    [{ yarn: metres(880), allowance: percentAdded(10) }],
    metres,
  );
  cited(
    "4896 inches of weft, 5 % added",
    byHand(commonPractice, "5140.8"),
    yarnWithAllowance,
    [{ yarn: inches(4896), allowance: percentAdded(5) }],
    inches,
  );
  cited(
    "414 ends of 5 yards, 4 % added for knots and breaks",
    byHand(commonPractice, "2152.8"),
    yarnWithAllowance,
    [{ yarn: yards(2070), allowance: percentAdded(4) }],
    yards,
  );

  it("is the yarn itself where nothing is allowed, and twice it where as much again is", () => {
    fc.assert(
      fc.property(fc.nat(9000), (yarn) => {
        expect(yarnWithAllowance({ yarn: yards(yarn), allowance: percentAdded(0) }).in(yards)).toBe(yarn);
        expect(yarnWithAllowance({ yarn: yards(yarn), allowance: percentAdded(100) }).in(yards)).toBe(2 * yarn);
      }),
    );
  });
  it("is refused where the percentage is one lost", () => {
    expect(() => yarnWithAllowance({ yarn: yards(2), allowance: percentLost(5) as never })).toThrow("percentAdded");
  });
});
