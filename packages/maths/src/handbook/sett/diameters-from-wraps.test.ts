import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { osterkampAshenhurst } from "#ci/sources.js";
import { diametersPerInch, inches } from "../../units/index.js";
import { diametersFromWraps } from "./diameters-from-wraps.js";

describe("the closest sett", () => {
  cited(
    "diameters for one wrap counted by hand",
    published(osterkampAshenhurst, "whole article", "1.43", "10/7"),
    diametersFromWraps,
    [{ wraps: 1, width: inches(1), ratio: 0.7 }],
    diametersPerInch,
  );
});

describe("the limits of diameters from wraps", () => {
  limits(
    diametersFromWraps,
    [
      "are the wraps of one inch, one wrap to a diameter",
      { wraps: 24, width: inches(1), ratio: 1 },
      24,
      diametersPerInch,
    ],
    { wraps: 0, width: inches(0), ratio: 0 },
  );
});
