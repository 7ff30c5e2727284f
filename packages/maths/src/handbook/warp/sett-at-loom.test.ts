import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { endsPerInch, percentAdded, percentLost } from "../../units/index.js";
import { settAtLoom } from "./sett-at-loom.js";

describe("the sett to be sleyed for one wanted in the cloth", () => {
  cited(
    "20 wanted to the inch, a tenth lost",
    byHand(commonPractice, "18"),
    settAtLoom,
    [{ settFinished: endsPerInch(20), reedToFinished: percentLost(10) }],
    endsPerInch,
  );

  it("is never closer, and as close where nothing is lost", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.nat({ max: 95 }), (eighths, lost) => {
        const settFinished = endsPerInch(eighths / 8);
        const sett = settAtLoom({ settFinished, reedToFinished: percentLost(lost) }).in(endsPerInch);
        expect(sett).toBeLessThanOrEqual(eighths / 8);
        expect(settAtLoom({ settFinished, reedToFinished: percentLost(0) }).in(endsPerInch)).toBe(eighths / 8);
      }),
    );
  });

  it("is refused where the width is all lost, and for a percentage added", () => {
    const settFinished = endsPerInch(20);
    expect(() => settAtLoom({ settFinished, reedToFinished: percentLost(100) })).toThrow("less than 100 %");
    expect(() => settAtLoom({ settFinished, reedToFinished: percentAdded(10) as never })).toThrow("percentLost");
  });
});
