import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { brooks1892, cdquestions, countArticle, davis1920, taylor1909 } from "#ci/sources.js";
import { cottonCount, galashielsCut, tex, worstedCount, yorkshireSkein } from "../../units/index.js";
import { foldedCount } from "./folded-count.js";

describe("a folded thread", () => {
  cited(
    "60s and 40s fold to 24s",
    { source: taylor1909, at: "site page 239", status: "read", prints: "24", exact: "24" },
    foldedCount,
    [{ counts: [cottonCount(60), cottonCount(40)] }],
    cottonCount,
  );
  cited(
    "60s and 40s fold to 24s, an exercise",
    { source: davis1920, at: "Ex. 27, p. 46", status: "read", prints: "24", exact: "24" },
    foldedCount,
    [{ counts: [cottonCount(60), cottonCount(40)] }],
    cottonCount,
  );
  cited(
    "40s and 20s",
    { source: brooks1892, at: "site page 91", status: "read", prints: "13 1/3", exact: "40/3" },
    foldedCount,
    [{ counts: [cottonCount(40), cottonCount(20)] }],
    cottonCount,
  );
  cited(
    "40s, 80s and 120s",
    {
      source: brooks1892,
      at: "site page 91",
      status: "read",
      prints: "21.81",
      exact: "240/11",
      differs: "cut off, not rounded: 21.818",
    },
    foldedCount,
    [{ counts: [cottonCount(40), cottonCount(80), cottonCount(120)] }],
    cottonCount,
  );
  cited(
    "64s, 48s and 32s",
    { source: davis1920, at: "Ex. 30, p. 48", status: "read", prints: "14 10/13", exact: "192/13" },
    foldedCount,
    [{ counts: [cottonCount(64), cottonCount(48), cottonCount(32)] }],
    cottonCount,
  );
  cited(
    "48s cashmere and 30s merino, in merino counts",
    { source: davis1920, at: "Ex. 32, p. 49", status: "read", prints: "15 15/31", exact: "480/31" },
    foldedCount,
    [{ counts: [cottonCount(30), worstedCount(48)] }],
    cottonCount,
  );
  cited(
    "80s, 40s and 20s",
    { source: davis1920, at: "Ex. 35, p. 51", status: "read", prints: "11 3/7", exact: "80/7" },
    foldedCount,
    [{ counts: [cottonCount(80), cottonCount(40), cottonCount(20)] }],
    cottonCount,
  );
  cited(
    "one of 20s, two of 30s, three of 40s",
    {
      source: countArticle,
      at: "example",
      status: "read",
      prints: "5.21",
      exact: "120/23",
      differs: "cut off, not rounded: 5.217",
    },
    foldedCount,
    [
      {
        counts: [cottonCount(20), cottonCount(30), cottonCount(30), cottonCount(40), cottonCount(40), cottonCount(40)],
      },
    ],
    cottonCount,
  );
  cited(
    "20s, 15s and 12s",
    {
      source: cdquestions,
      at: "question on folding",
      status: "read",
      prints: "10",
      exact: "5",
      differs: "misprint: 1/20 + 1/15 + 1/12 is 1/5",
    },
    foldedCount,
    [{ counts: [cottonCount(20), cottonCount(15), cottonCount(12)] }],
    cottonCount,
  );
  cited(
    "the partners of the three-thread example",
    {
      source: davis1920,
      at: "Ex. 46, p. 56",
      status: "read",
      prints: "8",
      exact: "7",
      differs: "misprint: the shares 1/7, 3/7 and 4/7 add to 8/7, so that the three threads fold to 7s",
    },
    foldedCount,
    [{ counts: [cottonCount(56), cottonCount("18.6666666666666666666666666666666667"), cottonCount(14)] }],
    cottonCount,
  );

  cited(
    "10s, 20s and 60s",
    published(taylor1909, "p. 309, ch. XII", "6", "6"),
    foldedCount,
    [{ counts: [cottonCount(10), cottonCount(20), cottonCount(60)] }],
    cottonCount,
  );
  cited(
    "35 and 21 skeins",
    published(davis1920, "Ex. 33, p. 50", "13 1/8", "105/8"),
    foldedCount,
    [{ counts: [yorkshireSkein(35), yorkshireSkein(21)] }],
    yorkshireSkein,
  );
  cited(
    "18 and 84 cut",
    published(davis1920, "Ex. 34, p. 50", "14.82", "252/17"),
    foldedCount,
    [{ counts: [galashielsCut(18), galashielsCut(84)] }],
    galashielsCut,
  );

  it("is coarser than each of its threads, whatever their order", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 2, maxLength: 6 }), (numbers) => {
        const counts = numbers.map((n) => cottonCount(n));
        const folded = foldedCount({ counts }).in(cottonCount);
        expect(folded).toBeLessThan(Math.min(...numbers));
        expect(foldedCount({ counts: [...counts].reverse() }).in(cottonCount)).toBeCloseTo(folded, 12);
      }),
    );
  });

  it("of one thread is that thread", () => {
    expect(foldedCount({ counts: [cottonCount(7)] }).value).toBe("7");
  });

  it("refuses an empty fold and a direct count among the threads", () => {
    expect(() => foldedCount({ counts: [] })).toThrow("counts");
    expect(() => foldedCount({ counts: [cottonCount(20), tex(30) as never] })).toThrow("foldedCount({ counts[1] })");
  });
});
