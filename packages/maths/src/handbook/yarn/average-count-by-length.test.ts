import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { davis1920 } from "#ci/sources.js";
import { cottonCount, galashielsCut, pounds, yards, yorkshireSkein } from "../../units/index.js";
import { averageCountByLength } from "./average-count-by-length.js";
import { yarnMass } from "./yarn-mass.js";

describe("the average count of lots of their own length", () => {
  cited(
    "a yard each of 18 and 84 cut",
    published(davis1920, "Ex. 34, p. 50", "29.6", "504/17"),
    averageCountByLength,
    [{ lengths: [yards(1), yards(1)], counts: [galashielsCut(18), galashielsCut(84)] }],
    galashielsCut,
  );
  cited(
    "a yard each of 35 and 21 skeins",
    published(davis1920, "Ex. 33, p. 50", "26 1/4", "105/4"),
    averageCountByLength,
    [{ lengths: [yards(1), yards(1)], counts: [yorkshireSkein(35), yorkshireSkein(21)] }],
    yorkshireSkein,
  );

  it("gives the mass of all the lots together", () => {
    const lot = fc.tuple(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 300 }));
    fc.assert(
      fc.property(fc.array(lot, { minLength: 1, maxLength: 5 }), (lots) => {
        const lengths = lots.map(([length]) => yards(length));
        const counts = lots.map(([, number]) => cottonCount(number));
        const count = averageCountByLength({ lengths, counts });
        const all = lots.reduce((total, [length, number]) => total + length / 840 / number, 0);
        const length = yards(lots.reduce((total, [one]) => total + one, 0));
        expect(yarnMass({ length, count }).in(pounds)).toBeCloseTo(all, 9);
      }),
    );
  });

  it("is refused with a lot whose length is not told", () => {
    const input = { lengths: [yards(1)], counts: [cottonCount(20), cottonCount(30)] };
    expect(() => averageCountByLength(input)).toThrow("{ counts }): expected a list of 1, one for each of lengths");
    expect(() => averageCountByLength({ lengths: [], counts: [] })).toThrow("lengths");
  });
});
