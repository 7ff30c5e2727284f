import { describe } from "vitest";
import { cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { cottonCount, grains, inches, percentAdded } from "../../units/index.js";
import { countFromCloth } from "./count-from-cloth.js";

describe("a piece of cloth", () => {
  cited(
    "a hundred threads of six inches with 5 % of crimp, weighing five grains",
    { source: commonPractice, at: "worked by hand", status: "common practice, no source", prints: "", exact: "175/6" },
    countFromCloth,
    [
      {
        threads: 100,
        clothLength: inches(6),
        crimp: percentAdded(5),
        mass: grains(5),
        system: cottonCount,
      },
    ],
    cottonCount,
  );
});
