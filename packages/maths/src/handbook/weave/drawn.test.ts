import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cottonCount, endsPerInch, inches, ounces, ouncesPerSquareYard, percentAdded } from "../../units/index.js";
import { countFromCloth } from "../cloth/count-from-cloth.js";
import { warpMassPerArea } from "../cloth/warp-mass-per-area.js";

describe("a piece of cloth", () => {
  it("gives back the count it was woven with", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 30 }), (count, percent) => {
        const crimp = percentAdded(percent);
        const perArea = warpMassPerArea({ sett: endsPerInch(40), count: cottonCount(count), crimp });
        const mass = ounces(perArea.in(ouncesPerSquareYard));
        const drawn = countFromCloth({ threads: 1440, clothLength: inches(36), crimp, mass, system: cottonCount });
        expect(drawn.in(cottonCount)).toBeCloseTo(count, 9);
      }),
    );
  });
});
