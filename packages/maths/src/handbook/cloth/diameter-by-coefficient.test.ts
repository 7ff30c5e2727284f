import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { centimetres, gramsPerCubicCentimetre, tex } from "../../units/index.js";
import { diameterByCoefficient } from "./diameter-by-coefficient.js";

describe("diameters by a coefficient", () => {
  cited(
    "15 tex of cotton",
    published(
      gateTextile,
      "2008, Q71, working",
      "0.01394",
      "0.0138569688032983756004969969627711974885",
      "misprint: 0.00444 × √(15 ÷ 1.54) is 0.01386",
    ),
    diameterByCoefficient,
    [{ coefficient: 0.00444, count: tex(15), density: gramsPerCubicCentimetre("1.54") }],
    centimetres,
  );
});

describe("the limits of diameter by coefficient", () => {
  limits(
    diameterByCoefficient,
    [
      "is the coefficient itself where a tex goes with a density of 1",
      { coefficient: 0.004, count: tex(1), density: gramsPerCubicCentimetre(1) },
      0.004,
      centimetres,
    ],
    { coefficient: 0, count: tex(0), density: gramsPerCubicCentimetre(0) },
  );
});
