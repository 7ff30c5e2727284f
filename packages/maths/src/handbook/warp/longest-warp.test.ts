import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { warpingPlan2015 } from "#ci/sources.js";
import { metres, yards } from "../../units/index.js";
import { longestWarp } from "./longest-warp.js";

describe("what the yarn at hand allows", () => {
  cited(
    "a cone of 47,600 m that gives one end to each of seven beams",
    published(warpingPlan2015, "example 1", "6800", "6800"),
    longestWarp,
    [{ yarn: metres(47_600), ends: 7 }],
    metres,
  );
});

describe("the limits of longest warp", () => {
  limits(longestWarp, ["of one end is the yarn itself", { yarn: yards(500), ends: 1 }, 500, yards], {
    yarn: yards(0),
    ends: 0,
  });
});
