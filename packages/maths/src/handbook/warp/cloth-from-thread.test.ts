import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { hossen2015 } from "#ci/sources.js";
import { metres, percentAdded } from "../../units/index.js";
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
