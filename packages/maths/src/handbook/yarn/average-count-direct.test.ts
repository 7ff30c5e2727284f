import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { kilograms, tex } from "../../units/index.js";
import { averageCountDirect } from "./average-count-direct.js";

describe("averages, contraction and regain", () => {
  cited(
    "equal masses of 30 and 20 tex",
    published(gateTextile, "2013, Q40", "24", "24"),
    averageCountDirect,
    [{ masses: [kilograms(1200), kilograms(1200)], counts: [tex(30), tex(20)] }],
    tex,
  );
});
