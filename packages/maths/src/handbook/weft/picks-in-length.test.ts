import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice, creativeThreadsWeft } from "#ci/sources.js";
import { centimetres, inches, picksPerCentimetre, picksPerInch } from "../../units/index.js";
import { picksInLength } from "./picks-in-length.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("picks", () => {
  cited(
    "in 220 cm at 8 to the centimetre",
    published(creativeThreadsWeft, "whole page", "1760", "1760"),
    picksInLength,
    [{ wovenLength: centimetres(220), picks: picksPerCentimetre(8) }],
  );
  cited("in 10 inches at 15.3 to the inch: the last goes past the length", worked("154"), picksInLength, [
    { wovenLength: inches("10.01"), picks: picksPerInch("15.3") },
  ]);
});

describe("the limits of picks in length", () => {
  limits(picksInLength, ["of less than a pick are one", { wovenLength: inches("0.01"), picks: picksPerInch(18) }, 1], {
    wovenLength: inches(0),
    picks: picksPerInch(0),
  });
});
