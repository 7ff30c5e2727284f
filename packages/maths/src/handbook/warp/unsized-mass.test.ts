import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brooks1892 } from "#ci/sources.js";
import { ounces, percentAdded, pounds } from "../../units/index.js";
import { unsizedMass } from "./unsized-mass.js";

describe("size on a warp", () => {
  cited(
    "5 lb 9 1/4 oz of which half is size",
    published(
      brooks1892,
      "p. 150, ch. IX",
      "2 lb 12 1/4 oz",
      "44.625",
      "the other half is printed 2 lb 13 oz, so that the two add up",
    ),
    unsizedMass,
    [{ sizedMass: ounces("89.25"), size: percentAdded(100) }],
    ounces,
  );
});

describe("the limits of unsized mass", () => {
  limits(
    unsizedMass,
    ["is the mass itself without size", { sizedMass: pounds(90), size: percentAdded(0) }, 90, pounds],
    { sizedMass: pounds(0), size: percentAdded(-1) },
  );
});
