import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { taylor1909, textileNotesHeavier2026 } from "#ci/sources.js";
import { cottonCount, endsPerInch, grams, pounds } from "../../units/index.js";
import { countForWeight } from "./count-for-weight.js";
import { settForWeave } from "./sett-for-weave.js";

const plain = { ends: 2, intersections: 2 };

describe("another weight", () => {
  cited(
    "20s for a cloth a sixth heavier",
    published(textileNotesHeavier2026, "whole article", "14.69", "720/49"),
    countForWeight,
    [{ count: cottonCount(20), mass: grams(6), newMass: grams(7) }],
    cottonCount,
  );
  cited(
    "45s for 15 lb in place of 10",
    published(taylor1909, "pp. 343 and 344, ch. XII", "20", "20"),
    countForWeight,
    [{ count: cottonCount(45), mass: pounds(10), newMass: pounds(15) }],
    cottonCount,
  );
  it("is refused for a piece of no weight and a weave without intersections", () => {
    expect(() => countForWeight({ count: cottonCount(20), mass: pounds(0), newMass: pounds(1) })).toThrow("({ mass })");
    expect(() => settForWeave({ sett: endsPerInch(20), ...plain, newEnds: 4, newIntersections: 0 })).toThrow(
      "newIntersections",
    );
  });
});
