import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { taylor1909 } from "../../sources/index.js";
import { cottonCount, endsPerInch, pounds } from "../../units/index.js";
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
