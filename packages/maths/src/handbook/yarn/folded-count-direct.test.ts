import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { wolfensberger1921 } from "#ci/sources.js";
import { cottonCount, denier, dramSilk, metricCount, tex } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { foldedCount } from "./folded-count.js";
import { foldedCountDirect } from "./folded-count-direct.js";

describe("a thread folded from direct counts", () => {
  cited(
    "2-thread of 1.8 drams and 3-thread of 2.7 drams stand for one of 4.5",
    published(wolfensberger1921, "p. 84, Disposition 3", "1 end of each", "4.5"),
    foldedCountDirect,
    [{ counts: [dramSilk("1.8"), dramSilk("2.7")] }],
    dramSilk,
  );

  it("is as heavy as its threads together, and the same as folding their indirect counts", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 6 }), (numbers) => {
        const folded = foldedCountDirect({ counts: numbers.map((n) => tex(n)) });
        expect(folded.value).toBe(String(numbers.reduce((a, b) => a + b)));
        const counts = numbers.map((n) => convertCount(tex(n), metricCount).count);
        expect(convertCount(foldedCount({ counts }), tex).count.in(tex)).toBeCloseTo(folded.in(tex), 9);
      }),
    );
  });

  it("is in the system of the first, and of one thread that thread", () => {
    expect(foldedCountDirect({ counts: [denier(9), tex(1)] }).toString()).toBe("18 den");
    expect(foldedCountDirect({ counts: [tex(7)] }).value).toBe("7");
  });

  it("refuses an empty fold and an indirect count among the threads", () => {
    expect(() => foldedCountDirect({ counts: [] })).toThrow("counts");
    expect(() => foldedCountDirect({ counts: [tex(20), cottonCount(30) as never] })).toThrow("counts[1]");
  });
});
