import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { davis1920 } from "#ci/sources.js";
import { cottonCount, percentOf, worstedCount, yards, yorkshireSkein } from "../../units/index.js";
import { shareOfThread } from "./share-of-thread.js";

describe("the share of a thread in a fold", () => {
  cited(
    "40s with a quarter more, beside 30s and 12s",
    published(
      davis1920,
      "Ex. 41, p. 53",
      "11.4",
      "500/43",
      "misprint: 1.25/40 is 11.63 % of the whole; the three printed shares still add to 100",
    ),
    shareOfThread,
    [
      {
        length: yards("1.25"),
        count: cottonCount(40),
        otherLengths: [yards("1.5"), yards("2.25")],
        otherCounts: [cottonCount(30), cottonCount(12)],
      },
    ],
    percentOf,
  );
  cited(
    "30s with a half more, beside 40s and 12s",
    published(davis1920, "Ex. 41, p. 53", "18.6", "800/43"),
    shareOfThread,
    [
      {
        length: yards("1.5"),
        count: cottonCount(30),
        otherLengths: [yards("1.25"), yards("2.25")],
        otherCounts: [cottonCount(40), cottonCount(12)],
      },
    ],
    percentOf,
  );
  cited(
    "12s with five quarters more, beside 40s and 30s",
    published(davis1920, "Ex. 41, p. 53", "70", "3000/43"),
    shareOfThread,
    [
      {
        length: yards("2.25"),
        count: cottonCount(12),
        otherLengths: [yards("1.25"), yards("1.5")],
        otherCounts: [cottonCount(40), cottonCount(30)],
      },
    ],
    percentOf,
  );
  cited(
    "silk folded with worsted four and a half times as coarse",
    published(davis1920, "Ex. 31, p. 49", "20 of 110 lb", "200/11"),
    shareOfThread,
    [{ length: yards("1"), count: worstedCount("4.5"), otherLengths: [yards("1")], otherCounts: [worstedCount(1)] }],
    percentOf,
  );
  cited(
    "35 skeins folded with 21",
    published(davis1920, "Ex. 33, p. 50", "37.5", "37.5"),
    shareOfThread,
    [{ length: yards("1"), count: yorkshireSkein(35), otherLengths: [yards("1")], otherCounts: [yorkshireSkein(21)] }],
    percentOf,
  );
  cited(
    "21 skeins folded with 35",
    published(davis1920, "Ex. 33, p. 50", "62.5", "62.5"),
    shareOfThread,
    [{ length: yards("1"), count: yorkshireSkein(21), otherLengths: [yards("1")], otherCounts: [yorkshireSkein(35)] }],
    percentOf,
  );
  cited(
    "48s worsted folded with 16s",
    published(davis1920, "Ex. 42, p. 54", "1/4 of the weight", "25"),
    shareOfThread,
    [{ length: yards("1"), count: worstedCount(48), otherLengths: [yards("1")], otherCounts: [worstedCount(16)] }],
    percentOf,
  );

  it("makes up the whole with the shares of all the other threads", () => {
    const thread = fc.record({ length: fc.integer({ min: 1, max: 40 }), number: fc.integer({ min: 1, max: 200 }) });
    fc.assert(
      fc.property(fc.array(thread, { minLength: 2, maxLength: 5 }), (threads) => {
        const shares = threads.map((one, at) => {
          const others = threads.filter((_, other) => other !== at);
          const otherLengths = others.map(({ length }) => yards(length));
          const otherCounts = others.map(({ number }) => cottonCount(number));
          const own = { length: yards(one.length), count: cottonCount(one.number) };
          return shareOfThread({ ...own, otherLengths, otherCounts }).in(percentOf);
        });
        expect(shares.reduce((a, b) => a + b)).toBeCloseTo(100, 9);
      }),
    );
  });

  it("of two alike is half", () => {
    const own = { length: yards(1), count: cottonCount(20) };
    expect(shareOfThread({ ...own, otherLengths: [yards(1)], otherCounts: [cottonCount(20)] }).value).toBe("50");
  });

  it("is refused with a length too few", () => {
    const own = { length: yards(1), count: cottonCount(20) };
    const input = { ...own, otherLengths: [yards(1)], otherCounts: [cottonCount(20), cottonCount(30)] };
    expect(() => shareOfThread(input)).toThrow("{ otherCounts }): expected a list of 1, one for each of otherLengths");
  });
});
