import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { clothQuantities, taylor1909 } from "#ci/sources.js";
import { percentAdded, yards } from "../../units/index.js";
import { threadForCloth } from "./thread-for-cloth.js";

describe("crimp and take-up", () => {
  cited(
    "40 yards of cloth with 5 % of crimp",
    published(clothQuantities, "example", "42", "42"),
    threadForCloth,
    [{ clothLength: yards(40), crimp: percentAdded(5) }],
    yards,
  );
  cited(
    "94 yards of satin with 72 intersections to the inch and 70s weft",
    published(taylor1909, "p. 427 of the copy", "98", "97.867428571428571428571428571428571"),
    threadForCloth,
    [
      {
        clothLength: yards(94),
        crimp: percentAdded("4.114285714285714285714285714285714"),
      },
    ],
    yards,
  );
});

describe("the limits of thread for cloth", () => {
  limits(
    threadForCloth,
    ["is as long as a cloth without crimp", { clothLength: yards(10), crimp: percentAdded(0) }, 10, yards],
    { clothLength: yards(0), crimp: percentAdded(-1) },
  );
});
