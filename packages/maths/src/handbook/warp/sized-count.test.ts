import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
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

describe("the limits of sized count", () => {
  limits(
    sizedCount,
    ["is the count itself without size", { count: cottonCount(40), size: percentAdded(0) }, 40, cottonCount],
    { count: cottonCount(0), size: percentAdded(-1) },
  );
});
