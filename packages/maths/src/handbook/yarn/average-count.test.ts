import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { davis1920 } from "#ci/sources.js";
import { cottonCount, galashielsCut, yards, yorkshireSkein } from "../../units/index.js";
import { averageCountByLength } from "./average-count-by-length.js";
import { averageCount } from "./average-count.js";
import { foldedCount } from "./folded-count.js";

describe("the average count of lots of their own length", () => {
  it("of lots of one length is the average of their threads", () => {
    const counts = [cottonCount(80), cottonCount(40), cottonCount(20)];
    const lengths = counts.map(() => yards(7));
    const average = averageCount({ counts }).in(cottonCount);
    expect(averageCountByLength({ lengths, counts }).in(cottonCount)).toBeCloseTo(average, 12);
  });
});

describe("averages, contraction and regain", () => {
  cited(
    "64s, 48s and 32s side by side",
    published(davis1920, "Ex. 30, p. 48", "44 4/13", "576/13"),
    averageCount,
    [{ counts: [cottonCount(64), cottonCount(48), cottonCount(32)] }],
    cottonCount,
  );
  cited(
    "35 and 21 skeins side by side",
    published(davis1920, "Ex. 33, p. 50", "26 1/4", "105/4"),
    averageCount,
    [{ counts: [yorkshireSkein(35), yorkshireSkein(21)] }],
    yorkshireSkein,
  );
  cited(
    "18 cut and 84 cut side by side",
    published(davis1920, "Ex. 34, p. 50", "29.6", "504/17"),
    averageCount,
    [{ counts: [galashielsCut(18), galashielsCut(84)] }],
    galashielsCut,
  );
  cited(
    "80s, 40s and 20s side by side",
    published(davis1920, "Ex. 35, p. 51", "34 2/7", "240/7"),
    averageCount,
    [{ counts: [cottonCount(80), cottonCount(40), cottonCount(20)] }],
    cottonCount,
  );
  cited(
    "14s, 12s and 80s side by side",
    published(davis1920, "Ex. 36, p. 51", "18.3", "5040/281", "misprint: three times the folded count rounded to 6.1"),
    averageCount,
    [{ counts: [cottonCount(14), cottonCount(12), cottonCount(80)] }],
    cottonCount,
  );
  it("an average lies between its counts, and above what they fold to", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 2, maxLength: 6 }), (numbers) => {
        const counts = numbers.map((n) => cottonCount(n));
        const average = averageCount({ counts }).in(cottonCount);
        expect(average).toBeGreaterThanOrEqual(Math.min(...numbers) - 1e-9);
        expect(average).toBeLessThanOrEqual(Math.max(...numbers) + 1e-9);
        expect(average).toBeCloseTo(numbers.length * foldedCount({ counts }).in(cottonCount), 8);
      }),
    );
  });
});

describe("the limits of average count", () => {
  limits(averageCount, ["of one end is the count of the end", { counts: [cottonCount(30)] }, 30, cottonCount], {
    counts: [cottonCount(0)],
  });
});
