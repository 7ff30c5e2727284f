import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, picksPerInch } from "../../units/index.js";
import { weftOfPlain } from "./weft-of-plain.js";
import { weftByTurns } from "./weft-by-turns.js";

describe("weft of yarns in turn", () => {
  cited(
    "two shots of three, 6 inches of tails",
    byHand(commonPractice, "3846"),
    weftByTurns,
    [
      {
        wovenLength: inches(20),
        picks: picksPerInch(16),
        widthInReed: inches(18),
        threads: 2,
        shots: 3,
        eachStripe: inches(6),
      },
    ],
    inches,
  );

  const piece = { wovenLength: inches(20), picks: picksPerInch(16), widthInReed: inches(18), eachStripe: inches(0) };
  it("of one yarn in every shot is the weft of a plain piece, and of two threads in a shot twice that", () => {
    const plain = weftOfPlain(piece).in(inches);
    expect(weftByTurns({ ...piece, threads: 1, shots: 1 }).in(inches)).toBe(plain);
    expect(weftByTurns({ ...piece, threads: 2, shots: 1 }).in(inches)).toBe(2 * plain);
  });
  it("of all yarns of a round together is that of the shots woven", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }), (one, other) => {
        const parts = [one, other].map((threads) => weftByTurns({ ...piece, threads, shots: one + other }).in(inches));
        expect((parts[0] ?? 0) + (parts[1] ?? 0)).toBeCloseTo(weftOfPlain(piece).in(inches), 8);
      }),
    );
  });
  it("is refused for a round of no shots", () => {
    expect(() => weftByTurns({ ...piece, threads: 1, shots: 0 })).toThrow("1 or more");
  });
});
