import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { inches, yards } from "../../units/index.js";
import { turnsForLength } from "./turns-for-length.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("the turn of a reel as measured", () => {
  cited("seven yards in turns of 80 inches", worked("4"), turnsForLength, [
    { warpLength: yards(7), measuredTurn: inches(80) },
  ]);
  cited("eight yards in turns of 72 inches", worked("4"), turnsForLength, [
    { warpLength: yards(8), measuredTurn: inches(72) },
  ]);
});

describe("the limits of turns for length", () => {
  limits(turnsForLength, ["is one turn for less than a turn", { warpLength: yards(1), measuredTurn: yards(2) }, 1], {
    warpLength: yards(0),
    measuredTurn: yards(0),
  });
});
