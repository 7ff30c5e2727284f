import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { silkWool2016 } from "#ci/sources.js";
import { cottonCount, endsPerInch, yardsPerPound } from "../../units/index.js";
import { settForEqualMass } from "./sett-for-equal-mass.js";

describe("another count in the same cloth", () => {
  cited(
    "silk for noil, as heavy in the warp",
    published(
      silkWool2016,
      "whole entry",
      "24.8",
      "1170/47",
      "cut off, not rounded; the aim is equal mass, where equal firmness would give 29.94",
    ),
    settForEqualMass,
    [{ sett: endsPerInch(36), count: yardsPerPound("4263.768278"), newCount: yardsPerPound("2948.350405") }],
    endsPerInch,
  );
});

describe("the limits of sett for equal mass", () => {
  limits(
    settForEqualMass,
    [
      "stays where the count stays",
      { sett: endsPerInch(40), count: cottonCount(20), newCount: cottonCount(20) },
      40,
      endsPerInch,
    ],
    { sett: endsPerInch(0), count: cottonCount(0), newCount: cottonCount(0) },
  );
});
