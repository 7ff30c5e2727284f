import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, yards } from "../../units/index.js";
import { weftOfPieces } from "./weft-of-pieces.js";

describe("weft of pieces woven alike", () => {
  cited(
    "two of 5140.8 inches",
    byHand(commonPractice, "285.6"),
    weftOfPieces,
    [{ number: 2, weft: inches("5140.8") }],
    yards,
  );

  it("is that of one piece for one, and nothing for none", () => {
    fc.assert(
      fc.property(fc.nat(9000), (weft) => {
        expect(weftOfPieces({ number: 1, weft: yards(weft) }).in(yards)).toBe(weft);
        expect(weftOfPieces({ number: 0, weft: yards(weft) }).in(yards)).toBe(0);
      }),
    );
  });
  it("is refused for part of a piece", () => {
    expect(() => weftOfPieces({ number: 1.5, weft: yards(2) })).toThrow("a whole number of entries");
  });
});
