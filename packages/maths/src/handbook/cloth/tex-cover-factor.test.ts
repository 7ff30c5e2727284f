import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wovenFabricCalculation } from "#ci/sources.js";
import { endsPerCentimetre, tex } from "../../units/index.js";
import { texCoverFactor } from "./tex-cover-factor.js";

describe("cover factors", () => {
  cited(
    "20 tex, 28 to the centimetre, on the tex scale",
    published(wovenFabricCalculation, "page 1, cover factor", "12.5", "12.52198067399882229989137254489514691847"),
    texCoverFactor,
    [{ threads: endsPerCentimetre(28), count: tex(20) }],
    null,
  );
});

describe("the limits of tex cover factor", () => {
  limits(
    texCoverFactor,
    ["is a tenth of the threads for one tex", { threads: endsPerCentimetre(24), count: tex(1) }, 2.4],
    { threads: endsPerCentimetre(0), count: tex(0) },
  );
});
