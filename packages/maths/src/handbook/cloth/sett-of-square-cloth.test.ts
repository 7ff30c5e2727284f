import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import {
  endsPerCentimetre,
  endsPerInch,
  cottonCount,
  gramsPerSquareMetre,
  metricCount,
  ouncesPerSquareYard,
  percentAdded,
  percentLost,
  picksPerCentimetre,
} from "../../units/index.js";
import { clothMassPerArea } from "./cloth-mass-per-area.js";
import { settOfSquareCloth } from "./sett-of-square-cloth.js";

describe("threads of a square cloth", () => {
  cited(
    "210 grams to the square metre of metric 20s, 5 % crimp",
    byHand(commonPractice, "20"),
    settOfSquareCloth,
    [{ massPerArea: gramsPerSquareMetre(210), count: metricCount(20), crimp: percentAdded(5) }],
    endsPerCentimetre,
  );
  // An inch of one way in a square yard is 36 yd a thread: 36 × 16 ÷ 840 oz for 1s. 8 oz of 8/2, no crimp: 8 × 4 × 840 ÷ 576 ÷ 2.
  cited(
    "8 ounces to the square yard of 4s cotton, no crimp",
    byHand(commonPractice, "70/3"),
    settOfSquareCloth,
    [{ massPerArea: ouncesPerSquareYard(8), count: cottonCount(4), crimp: percentAdded(0) }],
    endsPerInch,
  );

  it("weigh again what was wanted", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 1, max: 90 }),
        fc.nat({ max: 40 }),
        (mass, count, more) => {
          const [yarn, crimp] = [metricCount(count), percentAdded(more)];
          const sett = settOfSquareCloth({ massPerArea: gramsPerSquareMetre(mass), count: yarn, crimp });
          const picks = picksPerCentimetre(sett.in(endsPerCentimetre));
          const both = { warpCount: yarn, weftCount: yarn, warpCrimp: crimp, weftCrimp: crimp };
          expect(clothMassPerArea({ sett, picks, ...both }).in(gramsPerSquareMetre)).toBeCloseTo(mass, 9);
        },
      ),
    );
  });

  it("are refused for a cloth of nothing and for a crimp given as a loss", () => {
    const given = { massPerArea: gramsPerSquareMetre(210), count: metricCount(20), crimp: percentAdded(5) };
    expect(() => settOfSquareCloth({ ...given, massPerArea: gramsPerSquareMetre(0) })).toThrow("more than 0");
    expect(() => settOfSquareCloth({ ...given, crimp: percentLost(5) as never })).toThrow("percentAdded");
  });
});
