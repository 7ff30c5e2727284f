import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { countArticle, davis1920 } from "#ci/sources.js";
import { cottonCount, worstedCount } from "../../units/index.js";
import { partnerCount } from "./partner-count.js";

describe("a folded thread", () => {
  cited(
    "the partner of 30s for 21s",
    { source: davis1920, at: "Ex. 38, p. 52", status: "read", prints: "70", exact: "70" },
    partnerCount,
    [{ wanted: cottonCount(21), counts: [cottonCount(30)] }],
    cottonCount,
  );
  cited(
    "the partner of 48s and 24s for 10s",
    { source: davis1920, at: "Ex. 39, p. 52", status: "read", prints: "26 2/3", exact: "80/3" },
    partnerCount,
    [{ wanted: cottonCount(10), counts: [cottonCount(48), cottonCount(24)] }],
    cottonCount,
  );
  cited(
    "the partner of 40s and 30s worsted for 10s",
    { source: davis1920, at: "Ex. 40, p. 53", status: "read", prints: "24", exact: "24" },
    partnerCount,
    [{ wanted: worstedCount(10), counts: [worstedCount(40), worstedCount(30)] }],
    worstedCount,
  );
  cited(
    "the partner of 16s worsted for 12s",
    { source: davis1920, at: "Ex. 42, p. 54", status: "read", prints: "48", exact: "48" },
    partnerCount,
    [{ wanted: worstedCount(12), counts: [worstedCount(16)] }],
    worstedCount,
  );
  cited(
    "the partner of 30s for 5s",
    { source: countArticle, at: "example", status: "read", prints: "6", exact: "6" },
    partnerCount,
    [{ wanted: cottonCount(5), counts: [cottonCount(30)] }],
    cottonCount,
  );
  it("cannot be finer than a thread that is already in it", () => {
    expect(() => partnerCount({ wanted: cottonCount(30), counts: [cottonCount(30)] })).toThrow("partnerCount(…)");
  });
});

describe("the limits of partner count", () => {
  limits(
    partnerCount,
    [
      "of one thread that the wanted one is half of is as fine as that thread",
      { wanted: cottonCount(20), counts: [cottonCount(40)] },
      40,
      cottonCount,
    ],
    { wanted: cottonCount(0), counts: [] },
  );
});
