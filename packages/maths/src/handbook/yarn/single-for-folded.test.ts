import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brown1923, gateTextile } from "#ci/sources.js";
import { cottonCount, grams, percentAdded, percentLost } from "../../units/index.js";
import { contractedCount } from "./contracted-count.js";
import { singleForFolded } from "./single-for-folded.js";
import { waterInYarn } from "./water-in-yarn.js";

describe("a folded yarn that twisting has shortened", () => {
  it("undoes the single found for it", () => {
    const numbers = fc.integer({ min: 1, max: 300 });
    fc.assert(
      fc.property(numbers, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 60 }), (number, plies, lost) => {
        const contraction = percentLost(lost);
        const count = singleForFolded({ folded: cottonCount(number), plies, contraction });
        expect(contractedCount({ count, plies, contraction }).in(cottonCount)).toBeCloseTo(number, 9);
      }),
    );
  });
});

describe("averages, contraction and regain", () => {
  cited(
    "the single for a two-fold 16s with 10 % taken up",
    published(
      gateTextile,
      "1992, Q3",
      "35.2",
      "320/9",
      "the key adds 10 % of the folded length; here it is of the single",
    ),
    singleForFolded,
    [{ folded: cottonCount(16), plies: 2, contraction: percentLost(10) }],
    cottonCount,
  );
  cited(
    "two threads that weigh as much as four of 40/2",
    published(brown1923, "p. 31", "20/2", "10"),
    singleForFolded,
    [{ folded: cottonCount(5), plies: 2, contraction: percentLost(0) }],
    cottonCount,
  );
  it("nothing is taken up, nothing is wet: the sums leave things as they are", () => {
    const none = { folded: cottonCount(16), plies: 2, contraction: percentLost(0) };
    expect(singleForFolded(none).value).toBe("32");
    expect(waterInYarn({ mass: grams(100), regain: percentAdded(0) }).value).toBe("0");
  });
});

describe("the limits of single for folded", () => {
  limits(
    singleForFolded,
    [
      "is the folded count itself for one ply that loses nothing",
      { folded: cottonCount(20), plies: 1, contraction: percentLost(0) },
      20,
      cottonCount,
    ],
    { folded: cottonCount(0), plies: 0, contraction: percentLost(100) },
  );
});
