import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { rugtalkYarnSize } from "#ci/sources.js";
import { cottonCount, percentAdded, percentLost, yardsPerPound } from "../../units/index.js";
import { contractedCount } from "./contracted-count.js";
import { resultantCount } from "./resultant-count.js";

describe("a folded yarn that twisting has shortened", () => {
  cited(
    "5/2 cotton that loses 5 % in plying",
    published(
      rugtalkYarnSize,
      "British order statement",
      "2280",
      "1995",
      "misprint: it goes on from 2400 where 4200 ÷ 2 is 2100",
    ),
    contractedCount,
    [{ count: cottonCount(5), plies: 2, contraction: percentLost(5) }],
    yardsPerPound,
  );

  it("with nothing taken up is the resultant", () => {
    const yarn = { count: cottonCount(8), plies: 2 };
    expect(contractedCount({ ...yarn, contraction: percentLost(0) }).value).toBe(resultantCount(yarn).value);
  });

  it("is refused where all of it would be taken up, or the base is not said", () => {
    const yarn = { count: cottonCount(8), plies: 2 };
    expect(() => contractedCount({ ...yarn, contraction: percentLost(100) })).toThrow("contraction");
    expect(() => contractedCount({ ...yarn, contraction: percentAdded(5) as never })).toThrow("contraction");
  });
});
