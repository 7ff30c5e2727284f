import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { cottonCount, picksPerInch } from "../../units/index.js";
import { picksForCount } from "./picks-for-count.js";

describe("another count in the same cloth", () => {
  cited(
    "91 picks of 44s in 60s",
    published(
      taylor1909,
      "pp. 342 and 343, ch. XII",
      "106 1/2",
      "106.2651058780478855300579783150213252883",
      "the root of 11,292.3 is put up to the half",
    ),
    picksForCount,
    [{ picks: picksPerInch(91), count: cottonCount(44), newCount: cottonCount(60) }],
    picksPerInch,
  );
});

describe("the limits of picks for count", () => {
  limits(
    picksForCount,
    [
      "are the picks unchanged for an unchanged count",
      { picks: picksPerInch(40), count: cottonCount(20), newCount: cottonCount(20) },
      40,
      picksPerInch,
    ],
    { picks: picksPerInch(0), count: cottonCount(0), newCount: cottonCount(0) },
  );
});
