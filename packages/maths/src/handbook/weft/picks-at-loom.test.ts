import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { percentLost, picksPerInch } from "../../units/index.js";
import { picksAtLoom } from "./picks-at-loom.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("picks", () => {
  cited(
    "20 wanted in a cloth that loses a tenth",
    worked("18"),
    picksAtLoom,
    [{ picksFinished: picksPerInch(20), loomToFinished: percentLost(10) }],
    picksPerInch,
  );
});

describe("the limits of picks at loom", () => {
  limits(
    picksAtLoom,
    [
      "are the picks of the finished cloth where nothing is lost",
      { picksFinished: picksPerInch(20), loomToFinished: percentLost(0) },
      20,
      picksPerInch,
    ],
    { picksFinished: picksPerInch(0), loomToFinished: percentLost(100) },
  );
});
