import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { solveFor } from "../../engine/solve/index.js";
import { currency } from "../../units/index.js";
import { costByPieces } from "./cost-by-pieces.js";

const shillings = currency("shillings");

describe("work paid by the piece", () => {
  for (const [title, pieces, exact] of [
    ["three pieces and a half at 12 shillings", 3.5, "42"],
    ["a quarter piece at 12 shillings", 0.25, "3"],
    ["ten pieces at 12 shillings", 10, "120"],
  ] as const) {
    cited(title, byHand(commonPractice, exact), costByPieces, [{ pieces, charge: shillings(12) }], shillings);
  }

  it("is turned round to the pieces, quarters among them", () => {
    const pieces = solveFor(costByPieces, "pieces", "cost");
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 90 }), (quarters, charge) => {
        const cost = costByPieces({ pieces: quarters / 4, charge: shillings(charge) });
        expect(pieces({ cost, charge: shillings(charge) })).toBe(quarters / 4);
      }),
    );
  });

  it("is refused for no piece and for no charge", () => {
    expect(() => costByPieces({ pieces: 0, charge: shillings(12) })).toThrow("more than 0");
    expect(() => costByPieces({ pieces: 1, charge: shillings(0) })).toThrow("more than 0");
  });
});
