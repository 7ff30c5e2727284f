import { describe } from "vitest";
import { cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { cottonCount, grains, inches, percentAdded, pounds, yards } from "../../units/index.js";
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

describe("the limits of count from cloth", () => {
  limits(
    countFromCloth,
    [
      "is 1 for one straight thread of 840 yards that weighs a pound",
      { threads: 1, clothLength: yards(840), crimp: percentAdded(0), mass: pounds(1), system: cottonCount },
      1,
      cottonCount,
    ],
    { threads: 0, clothLength: yards(0), crimp: percentAdded(-1), mass: pounds(0) },
  );
});
