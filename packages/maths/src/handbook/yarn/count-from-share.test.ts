import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { davis1920 } from "#ci/sources.js";
import { forColumns } from "../../engine/columns/index.js";
import { cottonCount, percentLost, percentOf } from "../../units/index.js";
import { countFromShare } from "./count-from-share.js";
import { foldedCount } from "./folded-count.js";

describe("the count of a thread with a wanted share of the mass", () => {
  cited(
    "a fifth of 12s",
    published(davis1920, "Ex. 45, p. 55", "60", "60"),
    countFromShare,
    [{ folded: cottonCount(12), share: percentOf(20) }],
    cottonCount,
  );
  cited(
    "four fifths of 12s",
    published(davis1920, "Ex. 45, p. 55", "15", "15"),
    countFromShare,
    [{ folded: cottonCount(12), share: percentOf(80) }],
    cottonCount,
  );
  cited(
    "a seventh of 8s",
    published(davis1920, "Ex. 46, p. 56", "56", "56"),
    countFromShare,
    [{ folded: cottonCount(8), share: percentOf("14.2857142857142857142857142857142857") }],
    cottonCount,
  );
  cited(
    "three sevenths of 8s",
    published(davis1920, "Ex. 46, p. 56", "18 2/3", "56/3"),
    countFromShare,
    [{ folded: cottonCount(8), share: percentOf("42.8571428571428571428571428571428571") }],
    cottonCount,
  );
  cited(
    "four sevenths of 8s",
    published(davis1920, "Ex. 46, p. 56", "14", "14"),
    countFromShare,
    [{ folded: cottonCount(8), share: percentOf("57.1428571428571428571428571428571429") }],
    cottonCount,
  );
  cited(
    "two fifths of 20s, a folded yarn that the book calls an average",
    published(davis1920, "Ex. 47, p. 56", "50", "50"),
    countFromShare,
    [{ folded: cottonCount(20), share: percentOf(40) }],
    cottonCount,
  );
  cited(
    "three fifths of 20s, a folded yarn that the book calls an average",
    published(davis1920, "Ex. 47, p. 56", "33 1/3", "100/3"),
    countFromShare,
    [{ folded: cottonCount(20), share: percentOf(60) }],
    cottonCount,
  );

  it("gives two threads that fold to the count wanted", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 200 }), (percent, number) => {
        const folded = cottonCount(number);
        const counts = [percent, 100 - percent].map((part) => countFromShare({ folded, share: percentOf(part) }));
        expect(foldedCount({ counts }).in(cottonCount)).toBeCloseTo(number, 9);
      }),
    );
  });

  it("is that of the whole where the thread is the whole", () => {
    expect(countFromShare({ folded: cottonCount(12), share: percentOf(100) }).value).toBe("12");
  });

  it("is refused for no share, for more than the whole and for a loss", () => {
    const folded = cottonCount(12);
    expect(() => countFromShare({ folded, share: percentOf(0) })).toThrow("share");
    expect(() => countFromShare({ folded, share: percentOf(101) })).toThrow("no more than 100 %");
    expect(() => countFromShare({ folded, share: percentLost(20) as never })).toThrow("share");
  });

  it("is refused in a column too, at the row where the share is more than the whole", () => {
    const columns = forColumns(countFromShare, { folded: cottonCount, share: percentOf }, cottonCount);
    expect([...columns({ folded: [12, 12], share: [100, 20] })]).toEqual([12, 60]);
    expect(() => columns({ folded: [12, 12], share: [20, 100.5] })).toThrow("{ share[1] })");
  });
});
