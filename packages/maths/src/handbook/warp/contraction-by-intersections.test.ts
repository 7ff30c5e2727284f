import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { cottonCount, inches } from "../../units/index.js";
import { contractionByIntersections } from "./contraction-by-intersections.js";

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "plain cloth of middling weight, 60 picks of 40s",
    published(taylor1909, "p. 429 of the copy", "4 1/2", "4.5"),
    contractionByIntersections,
    [{ intersections: 60, length: inches(1), multiplier: 3, weftCount: cottonCount(40) }],
    null,
  );
});

describe("contraction by intersections", () => {
  cited(
    "satin of five, 180 picks of 70s",
    published(taylor1909, "p. 427 of the copy", "4", "144/35"),
    contractionByIntersections,
    [{ intersections: 72, length: inches(1), multiplier: 4, weftCount: cottonCount(70) }],
  );
  cited(
    "plain cloth, 120 picks of 70s",
    published(taylor1909, "p. 428 of the copy", "6 6/7", "48/7"),
    contractionByIntersections,
    [{ intersections: 120, length: inches(1), multiplier: 4, weftCount: cottonCount(70) }],
  );
});

describe("the limits of contraction by intersections", () => {
  limits(
    contractionByIntersections,
    [
      "is the multiplier for one intersection an inch of ones",
      { intersections: 1, length: inches(1), multiplier: 3, weftCount: cottonCount(1) },
      3,
    ],
    { intersections: 0, length: inches(0), multiplier: 0, weftCount: cottonCount(0) },
  );
});
