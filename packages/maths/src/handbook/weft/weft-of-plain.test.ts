import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, picksPerInch } from "../../units/index.js";
import { weftLength } from "./weft-length.js";
import { weftOfPlain } from "./weft-of-plain.js";

describe("weft of a piece in one yarn", () => {
  cited(
    "20 inches at 16 picks, 18 inches wide, 6 inches of tails",
    byHand(commonPractice, "5766"),
    weftOfPlain,
    [{ wovenLength: inches(20), picks: picksPerInch(16), widthInReed: inches(18), eachStripe: inches(6) }],
    inches,
  );

  it("is the weft laid straight where no tails are counted", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 40 }), (length, picks) => {
        const cloth = { wovenLength: inches(length), picks: picksPerInch(picks), widthInReed: inches(18) };
        const plain = weftOfPlain({ ...cloth, eachStripe: inches(0) });
        expect(plain.in(inches)).toBe(weftLength(cloth).in(inches));
      }),
    );
  });
  it("is refused for a piece of no length", () => {
    const none = { wovenLength: inches(0), picks: picksPerInch(16), widthInReed: inches(18), eachStripe: inches(0) };
    expect(() => weftOfPlain(none)).toThrow("more than 0");
  });
});
