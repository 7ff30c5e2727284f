import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { balasubramanianCloth, coverFactor, fabricGeometry, gateTextile, stickgarn2018 } from "#ci/sources.js";
import {
  cottonCount,
  diametersPerInch,
  gramsPerCubicCentimetre,
  inches,
  millimetres,
  percentOf,
  tex,
} from "../../units/index.js";
import { diametersByPeirce } from "./diameters-by-peirce.js";
import { yarnDiameter } from "./yarn-diameter.js";

describe("the diameter of a yarn", () => {
  cited(
    "30 tex of nylon in one filament",
    published(coverFactor, "section A, fractional cover", "0.0183 cm", "0.1830472720605802163262132107689543688"),
    yarnDiameter,
    [{ count: tex(30), density: gramsPerCubicCentimetre(1.14), packing: percentOf(100) }],
    millimetres,
  );
  cited(
    "metric 120 polyester as a solid rod",
    published(stickgarn2018, "whole article", "0.088", "0.08800435266051818031568787990053641266"),
    yarnDiameter,
    [{ count: tex(1000 / 120), density: gramsPerCubicCentimetre(1.37), packing: percentOf(100) }],
    millimetres,
  );
  cited(
    "two plies of metric 120 polyester as one round yarn",
    published(
      stickgarn2018,
      "whole article",
      "0.176",
      "0.1244569490803695808006442965134311994",
      "misprint: it doubles the diameter, where twice the mass is √2 of it; 0.176 is the two plies side by side",
    ),
    yarnDiameter,
    [{ count: tex(2000 / 120), density: gramsPerCubicCentimetre(1.37), packing: percentOf(100) }],
    millimetres,
  );
  cited(
    "metric 40 cotton as a solid rod",
    published(stickgarn2018, "whole article", "0.145", "0.1451899614740420657679667059881433807747"),
    yarnDiameter,
    [{ count: tex(25), density: gramsPerCubicCentimetre(1.51), packing: percentOf(100) }],
    millimetres,
  );
  cited(
    "one tex at a density of one",
    published(
      gateTextile,
      "2018, Q14, working",
      "0.00337 cm",
      "0.03568248232305542229077932745130165181",
      "misprint: it is 0.003568 cm, the digits of 3.57 changed about",
    ),
    yarnDiameter,
    [{ count: tex(1), density: gramsPerCubicCentimetre(1), packing: percentOf(100) }],
    millimetres,
  );
  cited(
    "one tex at a density of one, at the packing of 0.646 that the rule of 4.44 holds",
    published(gateTextile, "2018, Q14, working", "0.00444 cm", "0.04439548454040851232651006478143326611914"),
    yarnDiameter,
    [{ count: tex(1), density: gramsPerCubicCentimetre(1), packing: percentOf("64.6") }],
    millimetres,
  );
  cited(
    "one tex of cotton yarn of 0.91 to the cubic centimetre",
    published(
      fabricGeometry,
      "section 11.2",
      "1/26.6",
      "0.03740540515585688920257902093582481436",
      "the density 0.91 stated beside it gives 1/26.73",
    ),
    yarnDiameter,
    [{ count: tex(1), density: gramsPerCubicCentimetre(0.91), packing: percentOf(100) }],
    millimetres,
  );
  cited(
    "a cotton count of one at a cubic centimetre to the gram",
    published(
      balasubramanianCloth,
      "Fabric Geometry",
      "34.14 thousandths of an inch",
      "0.8671219458924601546607952463358045338",
    ),
    yarnDiameter,
    [{ count: tex(32399455 / 54864), density: gramsPerCubicCentimetre(1), packing: percentOf(100) }],
    millimetres,
  );

  it("doubles with four times the tex, and with a quarter of the room filled", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 4, max: 100 }), (thickness, percent) => {
        const yarn = { count: tex(thickness), density: gramsPerCubicCentimetre("1.5"), packing: percentOf(percent) };
        const once = yarnDiameter(yarn).in(millimetres);
        expect(yarnDiameter({ ...yarn, count: tex(4 * thickness) }).in(millimetres)).toBeCloseTo(2 * once, 9);
        expect(yarnDiameter({ ...yarn, packing: percentOf(percent / 4) }).in(millimetres)).toBeCloseTo(2 * once, 9);
      }),
    );
  });

  it("by the rule of Peirce is that of a yarn of 0.91 g to the cubic centimetre", () => {
    const count = tex(32399455 / 54864 / 36);
    const cotton = { count, density: gramsPerCubicCentimetre("0.914"), packing: percentOf(100) };
    expect(
      1 / yarnDiameter(cotton).in(inches) / diametersByPeirce({ count: cottonCount(36) }).in(diametersPerInch),
    ).toBeCloseTo(1, 2);
  });

  it("is refused where more than all of the room would be fibre, and for no tex", () => {
    const yarn = { count: tex(30), density: gramsPerCubicCentimetre("1.5"), packing: percentOf(100) };
    expect(() => yarnDiameter({ ...yarn, packing: percentOf(101) })).toThrow("packing");
    expect(() => yarnDiameter({ ...yarn, count: tex(0) })).toThrow("count");
  });
});
