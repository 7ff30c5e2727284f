import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { sizingProblems } from "#ci/sources.js";
import { cottonCount, percentAdded } from "../../units/index.js";
import { sizedCount } from "./sized-count.js";

describe("size on a warp", () => {
  cited(
    "45s with 8 % of size",
    published(sizingProblems, "problem 1", "41.67", "125/3"),
    sizedCount,
    [{ count: cottonCount(45), size: percentAdded(8) }],
    cottonCount,
  );
});
