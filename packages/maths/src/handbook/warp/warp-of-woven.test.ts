import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, percentLost } from "../../units/index.js";
import { warpForOrder } from "./warp-for-order.js";
import { warpOfWoven } from "./warp-of-woven.js";

describe("warp in what is woven", () => {
  cited(
    "50 inches with 6 of fringe, 6 % taken up",
    byHand(commonPractice, "2782/47"),
    warpOfWoven,
    [{ woven: inches(50), takeUp: percentLost(6), fringes: inches(6) }],
    inches,
  );

  it("makes up the warp of the order with the loom waste", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 900 }),
        fc.nat(60),
        fc.nat(80),
        fc.nat(99),
        (woven, lost, fringe, waste) => {
          const given = { woven: inches(woven), takeUp: percentLost(lost), fringes: inches(fringe) };
          const whole = warpForOrder({ ...given, loomWaste: inches(waste) }).in(inches);
          expect(whole - waste).toBeCloseTo(warpOfWoven(given).in(inches), 9);
        },
      ),
    );
  });
  it("is the fringe alone where nothing is woven, and refused where the thread loses all", () => {
    const nothing = { woven: inches(0), fringes: inches(8) };
    expect(warpOfWoven({ ...nothing, takeUp: percentLost(8) }).in(inches)).toBe(8);
    expect(() => warpOfWoven({ ...nothing, takeUp: percentLost(100) })).toThrow("less than 100 %");
  });
});
