import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { bell1895, brooks1892, taylor1909 } from "#ci/sources.js";
import { boltonReed, dentsPerInch, inches, scotchReed, stockportReed } from "../../units/index.js";
import { endsInReed } from "./ends-in-reed.js";

describe("ends in a reed", () => {
  cited(
    "38 inches of an 1100 Scotch reed at two",
    published(brooks1892, "p. 96 of the copy", "2260", "2260"),
    endsInReed,
    [{ reed: scotchReed(1100), widthInReed: inches(38), endsPerDent: 2 }],
  );
  cited(
    "37 inches of a 2000 Scotch reed at two",
    published(taylor1909, "p. 244 of the copy", "4000", "4000"),
    endsInReed,
    [{ reed: scotchReed(2000), widthInReed: inches(37), endsPerDent: 2 }],
  );
  cited(
    "39 inches of a 36 Bolton reed at two",
    published(
      brooks1892,
      "p. 96 of the copy",
      "2238",
      "2316",
      "misprint: 36 × 39 × 1.6495 is 2315.9; 2238 fits none of the figures given",
    ),
    endsInReed,
    [{ reed: boltonReed(36), widthInReed: inches(39), endsPerDent: 2 }],
  );
  cited(
    "27 inches of 350 splits on 37, at two",
    { source: bell1895, at: "p. 278, ch. XI", status: "read", prints: "", exact: "512" },
    endsInReed,
    [{ reed: scotchReed(350), widthInReed: inches(27), endsPerDent: 2 }],
  );
  cited(
    "30 inches of a 70 Stockport reed at two",
    { source: taylor1909, at: "p. 245 of the copy", status: "read", prints: "", exact: "2100" },
    endsInReed,
    [{ reed: stockportReed(70), widthInReed: inches(30), endsPerDent: 2 }],
  );
  it("fill every dent", () => {
    expect(endsInReed({ reed: dentsPerInch(10), widthInReed: inches("20.31"), endsPerDent: 3 })).toBe(612);
  });
});

describe("the limits of ends in reed", () => {
  limits(
    endsInReed,
    [
      "of less than a dent are the ends of one dent",
      { reed: dentsPerInch(10), widthInReed: inches("0.01"), endsPerDent: 2 },
      2,
    ],
    { reed: dentsPerInch(0), widthInReed: inches(0), endsPerDent: 0 },
  );
});
