import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { davis1920 } from "#ci/sources.js";
import { cottonCount, metres, worstedCount, yards } from "../../units/index.js";
import { foldedCountFromLengths } from "./folded-count-from-lengths.js";
import { foldedCount } from "./folded-count.js";

describe("threads that run in at unlike lengths", () => {
  cited(
    "a worsted back of 15s at one and a half lengths, a face of 10s",
    published(davis1920, "Ex. 37, p. 52", "5", "5"),
    foldedCountFromLengths,
    [{ foldedLength: yards(1), lengths: [yards("1.5"), yards(1)], counts: [worstedCount(15), worstedCount(10)] }],
    worstedCount,
  );

  it("of like lengths fold as threads do that run in together", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 6 }), (numbers) => {
        const counts = numbers.map((n) => cottonCount(n));
        const found = foldedCountFromLengths({ foldedLength: metres(3), lengths: counts.map(() => metres(3)), counts });
        expect(found.in(cottonCount)).toBeCloseTo(foldedCount({ counts }).in(cottonCount), 9);
      }),
    );
  });

  it("make a coarser thread the more of one runs in", () => {
    const counts = [cottonCount(20), cottonCount(40)];
    const found = (more: number): number =>
      foldedCountFromLengths({ foldedLength: yards(1), lengths: [yards(1), yards(more)], counts }).in(cottonCount);
    expect(found(2)).toBeLessThan(found(1));
  });

  it("are refused without a length each", () => {
    const input = { foldedLength: yards(1), lengths: [yards(1)], counts: [cottonCount(20), cottonCount(40)] };
    expect(() => foldedCountFromLengths(input)).toThrow("{ counts }): expected a list of 1, one for each of lengths");
    expect(() => foldedCountFromLengths({ ...input, lengths: [yards(1), yards(0)] })).toThrow("lengths");
  });
});
