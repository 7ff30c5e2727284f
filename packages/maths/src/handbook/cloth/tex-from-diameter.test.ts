import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { centimetres, gramsPerCubicCentimetre, tex } from "../../units/index.js";
import { diameterByCoefficient } from "./diameter-by-coefficient.js";
import { texFromDiameter } from "./tex-from-diameter.js";

describe("diameters by a coefficient", () => {
  cited(
    "tex of a cotton yarn 0.01627 cm across",
    published(
      gateTextile,
      "2010, Q50, working",
      "20.47",
      "20.67901682087492898303709114519925330736",
      "misprint: 3.6644 is cut to 3.66 and its square printed as 13.29",
    ),
    texFromDiameter,
    [{ diameter: centimetres("0.01627"), coefficient: 0.00444, density: gramsPerCubicCentimetre("1.54") }],
    tex,
  );
  it("come back from the tex they give", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (thickness) => {
        const yarn = { coefficient: 0.00444, density: gramsPerCubicCentimetre("1.54") };
        const diameter = diameterByCoefficient({ ...yarn, count: tex(thickness) });
        expect(texFromDiameter({ ...yarn, diameter }).in(tex)).toBeCloseTo(thickness, 9);
      }),
    );
  });
});

describe("the limits of tex from diameter", () => {
  limits(
    texFromDiameter,
    [
      "is 1 where the thread is as thick as the coefficient, at a density of 1",
      { diameter: centimetres("0.004"), coefficient: 0.004, density: gramsPerCubicCentimetre(1) },
      1,
      tex,
    ],
    { diameter: centimetres(0), coefficient: 0, density: gramsPerCubicCentimetre(0) },
  );
});
