import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { commonPractice, weaveSpinDance2012 } from "#ci/sources.js";
import { inches, yards } from "../../units/index.js";
import { extraYarnOfTurn } from "./extra-yarn-of-turn.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("the turn of a reel as measured", () => {
  cited(
    "577 ends on a winder that turns eight inches too long",
    published(weaveSpinDance2012, "May 2012", "128", "1154/9"),
    extraYarnOfTurn,
    [{ ends: 577, turns: 1, measuredTurn: inches(80), nominalTurn: yards(2) }],
    yards,
  );
  cited(
    "10 ends of three turns, two inches too long",
    worked("60"),
    extraYarnOfTurn,
    [{ ends: 10, turns: 3, measuredTurn: inches(38), nominalTurn: inches(36) }],
    inches,
  );
  it("is refused where it is shorter than reckoned: then nothing is used beyond the plan", () => {
    const input = { ends: 100, turns: 1, measuredTurn: inches(70), nominalTurn: yards(2) };
    expect(() => extraYarnOfTurn(input)).toThrow("expected a length of 0 or more");
  });
});
