import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { bergdala, commonPractice } from "#ci/sources.js";
import { metres, yards } from "../../units/index.js";
import { endsFromYarn } from "./ends-from-yarn.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("what the yarn at hand allows", () => {
  cited("a hank of 720 m in a warp of 12 m", published(bergdala, "section on yarn", "60", "60"), endsFromYarn, [
    { yarn: metres(720), warpLength: metres(12) },
  ]);
  cited("a hank of 720 m in a warp of 11.1 m", worked("64"), endsFromYarn, [
    { yarn: metres(720), warpLength: metres("11.1") },
  ]);
});

describe("the limits of ends from yarn", () => {
  limits(endsFromYarn, ["are none of a yarn shorter than the warp", { yarn: yards("6.99"), warpLength: yards(7) }, 0], {
    yarn: yards(0),
    warpLength: yards(0),
  });
});
