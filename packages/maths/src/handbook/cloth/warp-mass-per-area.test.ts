import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { fabricProduction2015, fabricWeightGsm, gateTextile } from "#ci/sources.js";
import {
  cottonCount,
  endsPerCentimetre,
  endsPerInch,
  gramsPerSquareMetre,
  inches,
  metricCount,
  ounces,
  ouncesPerSquareYard,
  percentAdded,
} from "../../units/index.js";
import { warpMass } from "../warp/warp-mass.js";
import { warpMassPerArea } from "./warp-mass-per-area.js";

const examined = "Q74 and its working";

describe("the mass of a cloth for its size", () => {
  cited(
    "one end of ones cotton to the inch, by a mill's constant",
    published(
      fabricProduction2015,
      "formula list",
      "25.6",
      "161997275/6967728",
      "about 10 % of crimp stands in the constant unsaid",
    ),
    warpMassPerArea,
    [{ sett: endsPerInch(1), count: cottonCount(1), crimp: percentAdded(0) }],
    gramsPerSquareMetre,
  );
  cited(
    "warp of 30s, 35 to the centimetre",
    published(
      gateTextile,
      `2003, ${examined}`,
      "73.5",
      "73.374749995443277923592884222805482648",
      "0.59 ÷ 30 is put up to 0.0197 on the way",
    ),
    warpMassPerArea,
    [{ sett: endsPerCentimetre(35), count: cottonCount(30), crimp: percentAdded("6.5") }],
    gramsPerSquareMetre,
  );
  cited(
    "one end of ones cotton to the inch",
    published(fabricWeightGsm, "worked answer, the constant", "23.25", "23.24965541134785973275650255004213712131"),
    warpMassPerArea,
    [{ sett: endsPerInch(1), count: cottonCount(1), crimp: percentAdded(0) }],
    gramsPerSquareMetre,
  );
  cited(
    "one end of ones cotton to the inch, in ounces to the square yard",
    { source: fabricWeightGsm, at: "worked answer, the constant", status: "read", prints: "", exact: "24/35" },
    warpMassPerArea,
    [{ sett: endsPerInch(1), count: cottonCount(1), crimp: percentAdded(0) }],
    ouncesPerSquareYard,
  );
  it("is that of its warp, wound and woven, over the size of the piece", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 2, max: 120 }), (perInch, count) => {
        const ends = 36 * perInch;
        const wound = { ends, warpLength: inches("37.8"), count: cottonCount(count), allowance: percentAdded(0) };
        const yard = warpMassPerArea({ sett: endsPerInch(perInch), count: cottonCount(count), crimp: percentAdded(5) });
        expect(yard.in(ouncesPerSquareYard)).toBeCloseTo(warpMass(wound).in(ounces), 9);
      }),
    );
  });
});

describe("the limits of warp mass per area", () => {
  limits(
    warpMassPerArea,
    [
      "of straight ends is 4000 m at 20 m to the gram",
      { sett: endsPerCentimetre(40), count: metricCount(20), crimp: percentAdded(0) },
      200,
      gramsPerSquareMetre,
    ],
    { sett: endsPerCentimetre(0), count: metricCount(0), crimp: percentAdded(-1) },
  );
});
