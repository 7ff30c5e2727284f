import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { sweatyKnitter2015, taylor1909, textileNotes } from "#ci/sources.js";
import { cottonCount, diametersPerInch, tex, worstedCount } from "../../units/index.js";
import { diametersByProportion } from "./diameters-by-proportion.js";

describe("diameters per inch from those of a known yarn", () => {
  cited(
    "50s from the 156 of 32s",
    published(taylor1909, "site page 458", "195", "195"),
    diametersByProportion,
    [{ knownDiameters: diametersPerInch(156), knownCount: cottonCount(32), count: cottonCount(50) }],
    diametersPerInch,
  );
  cited(
    "35s from the 165 of 40s",
    published(textileNotes, "whole article", "154.34", "154.3433672044250821553296352080576586974"),
    diametersByProportion,
    [{ knownDiameters: diametersPerInch(165), knownCount: cottonCount(40), count: cottonCount(35) }],
    diametersPerInch,
  );
  cited(
    "number 2 cotton beside number 1",
    published(
      sweatyKnitter2015,
      "whole page",
      "half the diameter",
      "1.414213562373095048801688724209698078570",
      "misprint: twice the count is 0.707 of the diameter, not half",
    ),
    diametersByProportion,
    [{ knownDiameters: diametersPerInch(1), knownCount: cottonCount(1), count: cottonCount(2) }],
    diametersPerInch,
  );

  it("come back when the known and the other change places", () => {
    const numbers = fc.integer({ min: 1, max: 300 });
    fc.assert(
      fc.property(numbers, numbers, (known, other) => {
        const [knownCount, count] = [cottonCount(known), worstedCount(other)];
        const knownDiameters = diametersByProportion({ knownDiameters: diametersPerInch(156), knownCount, count });
        const back = diametersByProportion({ knownDiameters, knownCount: count, count: knownCount });
        expect(back.in(diametersPerInch)).toBeCloseTo(156, 9);
      }),
    );
  });

  it("are those known where the count is the same in another system", () => {
    const same = { knownDiameters: diametersPerInch(156), knownCount: cottonCount(32), count: worstedCount(48) };
    expect(diametersByProportion(same).in(diametersPerInch)).toBe(156);
  });

  it("are refused for a direct count, which goes the other way", () => {
    const input = { knownDiameters: diametersPerInch(156), knownCount: cottonCount(32), count: tex(30) as never };
    expect(() => diametersByProportion(input)).toThrow("{ count }): expected an indirect count");
  });
});
