import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brinton1919, commonPractice } from "#ci/sources.js";
import { yards } from "../../units/index.js";
import { packagesByLength } from "./packages-by-length.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("packages, spools and bobbins by length", () => {
  cited(
    "strips of 48 yards for a repeat of 36 inches at 12 yards to the inch",
    published(brinton1919, "chenille chapter", "9", "9"),
    packagesByLength,
    [{ needed: yards(432), packageLength: yards(48) }],
  );
  cited("433 yards in packages of 48", worked("10"), packagesByLength, [
    { needed: yards(433), packageLength: yards(48) },
  ]);
});

describe("the limits of packages by length", () => {
  limits(packagesByLength, ["are none where nothing is needed", { needed: yards(0), packageLength: yards(48) }, 0], {
    needed: yards(-1),
    packageLength: yards(0),
  });
});
