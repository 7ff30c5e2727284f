import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { percentLost, picksPerInch } from "../../units/index.js";
import { picksAtLoom } from "./picks-at-loom.js";
import { picksFinished } from "./picks-finished.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("picks", () => {
  cited(
    "18 at the loom in a cloth that loses a tenth",
    worked("20"),
    picksFinished,
    [{ picksAtLoom: picksPerInch(18), loomToFinished: percentLost(10) }],
    picksPerInch,
  );
  it("close up in finishing and open again on the way back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 0, max: 60 }), (picks, lost) => {
        const loomToFinished = percentLost(lost);
        const finished = picksFinished({ picksAtLoom: picksPerInch(picks), loomToFinished });
        expect(finished.in(picksPerInch)).toBeGreaterThanOrEqual(picks);
        expect(picksAtLoom({ picksFinished: finished, loomToFinished }).in(picksPerInch)).toBeCloseTo(picks, 12);
      }),
    );
  });
});

describe("the limits of picks finished", () => {
  limits(
    picksFinished,
    [
      "are the picks at the loom where nothing is lost",
      { picksAtLoom: picksPerInch(20), loomToFinished: percentLost(0) },
      20,
      picksPerInch,
    ],
    { picksAtLoom: picksPerInch(0), loomToFinished: percentLost(100) },
  );
});
