import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { cottonCount, drams, endsPerInch, milligrams, ounces, pounds } from "../../units/index.js";
import { countForWeightAndWeave } from "./count-for-weight-and-weave.js";
import { settForCountAndWeave } from "./sett-for-count-and-weave.js";

const toTwill = { ends: 4, intersections: 4, newEnds: 4, newIntersections: 2 };

const twillToTwill = { ends: 4, intersections: 2, newEnds: 10, newIntersections: 4 };

describe("another weight", () => {
  cited(
    "the weight alone, by the two rules together",
    published(taylor1909, "pp. 343 and 344, ch. XII", "20", "20"),
    countForWeightAndWeave,
    [
      {
        count: cottonCount(45),
        mass: pounds(10),
        newMass: pounds(15),
        ends: 3,
        intersections: 2,
        newEnds: 3,
        newIntersections: 2,
      },
    ],
    cottonCount,
  );
  it("is given however coarse the yarn comes out, for nothing is taken away on the way", () => {
    // In fractions: times = 1/16 ÷ 896 ÷ (98.6875 × 453592.37/256 × 369/370), newCount = 1/16 × times².
    const coarsest = { ends: 369, intersections: 1, newEnds: 1, newIntersections: 895 };
    const masses = { mass: milligrams("0.0625"), newMass: drams("98.6875") };
    const found = countForWeightAndWeave({ count: cottonCount("0.0625"), ...masses, ...coarsest }).in(cottonCount);
    expect(found / 9.999974748046852e-21).toBeCloseTo(1, 12);
  });
  it("comes out as wanted when count and sett are changed together", () => {
    const weights = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(weights, weights, fc.constantFrom(toTwill, twillToTwill), (from, to, weave) => {
        const [mass, newMass] = [pounds(from), pounds(to)];
        const [sett, count] = [endsPerInch(90), cottonCount(40)];
        const newCount = countForWeightAndWeave({ count, mass, newMass, ...weave });
        const newSett = settForCountAndWeave({ sett, count, newCount, ...weave });
        const heavier = (newSett.in(endsPerInch) / newCount.in(cottonCount)) * (40 / 90);
        expect(heavier).toBeCloseTo(to / from, 9);
      }),
    );
  });
});

describe("the limits of count for weight and weave", () => {
  limits(
    countForWeightAndWeave,
    [
      "is the count unchanged where weight and weave stay",
      {
        count: cottonCount(20),
        mass: ounces(8),
        newMass: ounces(8),
        ends: 4,
        intersections: 2,
        newEnds: 4,
        newIntersections: 2,
      },
      20,
      cottonCount,
    ],
    {
      count: cottonCount(0),
      mass: ounces(0),
      newMass: ounces(0),
      ends: 0,
      intersections: 0,
      newEnds: 0,
      newIntersections: 0,
    },
  );
});
