import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { endsPerInch, inches } from "../../units/index.js";
import { averageSett } from "./average-sett.js";

describe("the sett in the mean", () => {
  cited(
    "304 ends in 16 inches",
    byHand(commonPractice, "19"),
    averageSett,
    [{ ends: 304, widthInReed: inches(16) }],
    endsPerInch,
  );
  it("is refused in no width", () => {
    expect(() => averageSett({ ends: 304, widthInReed: inches(0) })).toThrow("more than 0");
  });
});
