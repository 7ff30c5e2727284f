import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, percentLost } from "../../units/index.js";
import { hemAtLoom } from "./hem-at-loom.js";

describe("a hem at the loom", () => {
  cited(
    "of an inch and a quarter, a tenth lost in finishing",
    byHand(commonPractice, "25/18"),
    hemAtLoom,
    [{ hemEachEnd: inches("1.25"), loomToFinished: percentLost(10) }],
    inches,
  );
  it("is nothing where none is turned under, and is refused of a cloth that loses all", () => {
    expect(hemAtLoom({ hemEachEnd: inches(0), loomToFinished: percentLost(10) }).in(inches)).toBe(0);
    expect(() => hemAtLoom({ hemEachEnd: inches(1), loomToFinished: percentLost(100) })).toThrow("less than 100 %");
  });
});
