import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
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
