import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { hossen2015 } from "#ci/sources.js";
import { metres, percentAdded, yards } from "../../units/index.js";
import { clothFromThread } from "./cloth-from-thread.js";

describe("crimp and take-up", () => {
  cited(
    "800 metres of warp with 8 % of crimp",
    published(hossen2015, "problem 3", "740.8", "20000/27", "rounded up"),
    clothFromThread,
    [{ threadLength: metres(800), crimp: percentAdded(8) }],
    metres,
  );
});

describe("the limits of cloth from thread", () => {
  limits(
    clothFromThread,
    ["is as long as a thread without crimp", { threadLength: yards(10), crimp: percentAdded(0) }, 10, yards],
    { threadLength: yards(0), crimp: percentAdded(-1) },
  );
});
