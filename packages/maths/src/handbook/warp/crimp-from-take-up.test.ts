import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice, crimpAndTakeUp2015 } from "#ci/sources.js";
import { percentAdded, percentLost } from "../../units/index.js";
import { crimpFromTakeUp } from "./crimp-from-take-up.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "a take-up of 20 % by the formula for crimp",
    published(crimpAndTakeUp2015, "equations 1 to 5", "C = 100T ÷ (100 − T)", "25"),
    crimpFromTakeUp,
    [{ takeUp: percentLost(20) }],
    percentAdded,
  );
});

describe("crimp and take-up", () => {
  cited("a take-up of a fifth as crimp", worked("25"), crimpFromTakeUp, [{ takeUp: percentLost(20) }], percentAdded);
});

describe("the limits of crimp from take up", () => {
  limits(crimpFromTakeUp, ["is none where nothing is taken up", { takeUp: percentLost(0) }, 0, percentAdded], {
    takeUp: percentLost(100),
  });
});
