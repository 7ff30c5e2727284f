import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, grams, kilograms, metricCount, pounds, tex } from "../../units/index.js";
import { averageCountByMass } from "./average-count-by-mass.js";
import { averageCountDirect } from "./average-count-direct.js";
import { convertCount } from "./convert-count.js";

describe("the average count of lots of their own mass", () => {
  cited(
    "1200 kg each of 30 and 20 tex, in metric counts",
    published(gateTextile, "2013, Q40", "24 tex", "125/3"),
    averageCountByMass,
    [
      {
        masses: [kilograms(1200), kilograms(1200)],
        counts: [metricCount("33.33333333333333333333333333333333333"), metricCount(50)],
      },
    ],
    metricCount,
  );

  it("is the same as in tex", () => {
    const lot = fc.tuple(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 300 }));
    fc.assert(
      fc.property(fc.array(lot, { minLength: 1, maxLength: 5 }), (lots) => {
        const masses = lots.map(([mass]) => grams(mass));
        const counts = lots.map(([, number]) => metricCount(number));
        const inTex = counts.map((count) => convertCount(count, tex).count);
        const average = averageCountDirect({ masses, counts: inTex });
        const found = averageCountByMass({ masses, counts }).in(metricCount);
        expect(found).toBeCloseTo(convertCount(average, metricCount).count.in(metricCount), 9);
      }),
    );
  });

  it("of lots of one count is that count", () => {
    const counts = [cottonCount(8), cottonCount(8)];
    expect(averageCountByMass({ masses: [pounds(1), pounds(2)], counts }).value).toBe("8");
  });

  it("is refused with a lot whose mass is not told", () => {
    const input = { masses: [pounds(1)], counts: [cottonCount(20), cottonCount(30)] };
    expect(() => averageCountByMass(input)).toThrow("{ counts }): expected a list of 1, one for each of masses");
  });
});
