import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { cottonCount, grams, metres, metricCount, ounces, pounds, yards, yardsPerPound } from "../../units/index.js";
import { yarnLength } from "./yarn-length.js";
import { countOfLabel } from "./count-of-label.js";

describe("the count of a label", () => {
  cited(
    "300 metres to 100 grams",
    byHand(commonPractice, "3"),
    countOfLabel,
    [{ length: metres(300), mass: grams(100) }],
    metricCount,
  );
  cited(
    "3360 yards to the pound",
    byHand(commonPractice, "4"),
    countOfLabel,
    [{ length: yards(3360), mass: pounds(1) }],
    cottonCount,
  );
  cited(
    "420 yards to two ounces",
    byHand(commonPractice, "3360"),
    countOfLabel,
    [{ length: yards(420), mass: ounces(2) }],
    yardsPerPound,
  );

  it("is told as a label tells it: yards to the pound or ounce, metres to the kilogram", () => {
    expect(countOfLabel({ length: yards(3360), mass: pounds(1) }).unit).toBe("yardsPerPound");
    expect(countOfLabel({ length: yards(420), mass: ounces(2) }).unit).toBe("yardsPerOunce");
    expect(countOfLabel({ length: metres(300), mass: grams(100) }).toString()).toBe("3000 m/kg");
  });
  it("gives the length of the label back for its mass", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 900 }), (length, mass) => {
        const count = countOfLabel({ length: metres(length), mass: grams(mass) });
        expect(yarnLength({ mass: grams(mass), count }).in(metres)).toBeCloseTo(length, 9);
      }),
    );
  });
  it("is refused for a package that holds nothing", () => {
    expect(() => countOfLabel({ length: metres(300), mass: grams(0) })).toThrow("more than 0");
  });
});
