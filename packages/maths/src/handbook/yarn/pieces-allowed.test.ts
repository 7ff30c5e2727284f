import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { yards } from "../../units/index.js";
import { piecesAllowed } from "./pieces-allowed.js";

describe("pieces a yarn allows", () => {
  cited("five reckoned, 50 yards over, 80 for one more", byHand(commonPractice, "5.625"), piecesAllowed, [
    { pieces: 5, onHand: yards(430), needed: yards(380), oneMore: yards(80) },
  ]);
  cited("three reckoned and half a piece short", byHand(commonPractice, "2.5"), piecesAllowed, [
    { pieces: 3, onHand: yards(100), needed: yards(140), oneMore: yards(80) },
  ]);
  it("grow with what is on hand", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.nat(900), (one, more) => {
        const given = { pieces: 4, needed: yards(4 * one), oneMore: yards(one) };
        const allowed = piecesAllowed({ ...given, onHand: yards(4 * one + more) });
        expect(allowed).toBeCloseTo(4 + more / one, 9);
      }),
    );
  });
  it("are none where not even the waste of the warp is there, and refused for a piece that takes nothing", () => {
    const given = { pieces: 1, onHand: yards(0), needed: yards(90) };
    expect(piecesAllowed({ ...given, oneMore: yards(80) })).toBe(0);
    expect(() => piecesAllowed({ ...given, oneMore: yards(0) })).toThrow("more than 0");
  });
});
