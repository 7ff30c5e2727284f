import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wovenFabricCalculation } from "#ci/sources.js";
import { coverFactorFromTexCover } from "./cover-factor-from-tex-cover.js";

describe("cover factors", () => {
  cited(
    "the scale of Peirce over the tex scale",
    published(
      wovenFabricCalculation,
      "page 1, cover factor",
      "less than 5 %",
      "1.045222134324819352290040513701112439293",
    ),
    coverFactorFromTexCover,
    [{ texCover: 1 }],
    null,
  );
});

describe("the limits of cover factor from tex cover", () => {
  limits(
    coverFactorFromTexCover,
    [
      "is 1 where the tex cover is the root of the tex of ones cotton over 25.4",
      { texCover: Math.sqrt(453592.37 / (840 * 0.9144)) / 25.4 },
      1,
    ],
    { texCover: 0 },
  );
});
