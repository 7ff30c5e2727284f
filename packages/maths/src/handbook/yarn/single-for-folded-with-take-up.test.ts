import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, percentAdded, percentLost } from "../../units/index.js";
import { singleForFoldedWithTakeUp } from "./single-for-folded-with-take-up.js";
import { singleForFolded } from "./single-for-folded.js";

describe("the single for a folded count, with take-up told of the folded length", () => {
  cited(
    "two-fold 16s with 10 % of the length taken up",
    published(gateTextile, "1992, Q3", "35.2", "35.2"),
    singleForFoldedWithTakeUp,
    [{ folded: cottonCount(16), plies: 2, contraction: percentAdded(10) }],
    cottonCount,
  );

  it("is the same as with the contraction of the singles that is the same length of yarn", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 99 }), (number, lost) => {
        const folded = cottonCount(number);
        const contraction = percentAdded((100 * lost) / (100 - lost));
        const single = singleForFoldedWithTakeUp({ folded, plies: 2, contraction }).in(cottonCount);
        const same = singleForFolded({ folded, plies: 2, contraction: percentLost(lost) }).in(cottonCount);
        expect(Math.abs(single - same)).toBeLessThan(1e-9 * same);
      }),
    );
  });

  it("with nothing taken up is the folded count times its plies", () => {
    const none = { folded: cottonCount(16), plies: 2, contraction: percentAdded(0) };
    expect(singleForFoldedWithTakeUp(none).value).toBe("32");
  });

  it("is refused with a percentage of the other base", () => {
    const input = { folded: cottonCount(16), plies: 2, contraction: percentLost(10) as never };
    expect(() => singleForFoldedWithTakeUp(input)).toThrow("expected a percentage added");
  });
});
