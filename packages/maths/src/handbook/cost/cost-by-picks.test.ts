import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { currency } from "../../units/index.js";
import { costByPicks } from "./cost-by-picks.js";

const pence = currency("pence");

describe("weaving paid by the pick", () => {
  // 36 yd are 1296 in of 64 picks: 82,944 of them, 8.2944 ten thousands at 3.
  cited(
    "36 yards of 64 picks to the inch at 3 pence for ten thousand",
    byHand(commonPractice, "24.8832"),
    costByPicks,
    [{ picks: 82944, charge: pence(3), picksCharged: 10000 }],
    pence,
  );
  cited(
    "84 picks at 5 pence for a hundred",
    byHand(commonPractice, "4.2"),
    costByPicks,
    [{ picks: 84, charge: pence(5), picksCharged: 100 }],
    pence,
  );

  it("is the charge for just so many, and twice it for twice as many", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90_000 }), fc.integer({ min: 1, max: 500 }), (picks, charge) => {
        const whole = costByPicks({ picks, charge: pence(charge), picksCharged: picks });
        expect(whole.in(pence)).toBe(charge);
        expect(costByPicks({ picks: 2 * picks, charge: pence(charge), picksCharged: picks }).in(pence)).toBe(
          2 * charge,
        );
      }),
    );
  });

  it("is refused for no pick, half a pick, and a charge for none", () => {
    const given = { picks: 100, charge: pence(3), picksCharged: 100 };
    expect(() => costByPicks({ ...given, picks: 0 })).toThrow("1 or more");
    expect(() => costByPicks({ ...given, picks: 0.5 })).toThrow("a whole number of picks");
    expect(() => costByPicks({ ...given, picksCharged: 0 })).toThrow("1 or more");
  });
});
