import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, percentLost, picksPerInch } from "../../units/index.js";
import { wovenLength } from "../warp/index.js";
import { picksOfStripe } from "./picks-of-stripe.js";

describe("picks of a stripe", () => {
  cited("4 inches finished, 12 % lost, at 8 picks", byHand(commonPractice, "36"), picksOfStripe, [
    {
      wovenLength: wovenLength({ finishedLength: inches(4), hemEachEnd: inches(0), loomToFinished: percentLost(12) }),
      picks: picksPerInch(8),
    },
  ]);
  cited("1 inch finished, 12 % lost, at 8 picks", byHand(commonPractice, "9"), picksOfStripe, [
    {
      wovenLength: wovenLength({ finishedLength: inches(1), hemEachEnd: inches(0), loomToFinished: percentLost(12) }),
      picks: picksPerInch(8),
    },
  ]);
  cited("4 1/2 inches at 9 picks, where a half goes up", byHand(commonPractice, "41"), picksOfStripe, [
    { wovenLength: inches("4.5"), picks: picksPerInch(9) },
  ]);

  it("are never more than half a pick off", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 300 }), (tenths, picks) => {
        const found = picksOfStripe({ wovenLength: inches(tenths / 10), picks: picksPerInch(picks / 10) });
        expect(Math.abs(found - (tenths * picks) / 100)).toBeLessThanOrEqual(0.5);
      }),
    );
  });
  it("may be none, and are refused for a stripe of no length", () => {
    expect(picksOfStripe({ wovenLength: inches("0.02"), picks: picksPerInch(20) })).toBe(0);
    expect(() => picksOfStripe({ wovenLength: inches(0), picks: picksPerInch(20) })).toThrow("more than 0");
  });
});
