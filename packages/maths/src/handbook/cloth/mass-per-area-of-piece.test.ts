import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited, published } from "#ci/cited.js";
import { brooks1892, commonPractice } from "#ci/sources.js";
import { solveFor } from "../../engine/solve/index.js";
import {
  grams,
  gramsPerSquareMetre,
  inches,
  metres,
  ounces,
  ouncesPerSquareYard,
  pounds,
  yards,
} from "../../units/index.js";
import { massPerAreaOfPiece } from "./mass-per-area-of-piece.js";

describe("a piece as weighed and measured", () => {
  cited(
    "36 yards of 36 inches that weigh 7 lb 2 1/2 oz",
    published(brooks1892, "Weight of a Piece", "", "229/72"),
    massPerAreaOfPiece,
    [{ mass: ounces("114.5"), length: yards(36), width: inches(36) }],
    ouncesPerSquareYard,
  );
  cited(
    "120 grams of 2 by 0.4 metres",
    byHand(commonPractice, "150"),
    massPerAreaOfPiece,
    [{ mass: grams(120), length: metres(2), width: metres("0.4") }],
    gramsPerSquareMetre,
  );

  it("is told by the square yard where the piece was measured in yards and ounces", () => {
    expect(massPerAreaOfPiece({ mass: ounces(12), length: yards(2), width: yards(1) }).toString()).toBe("6 oz/sq yd");
  });

  it("gives the mass of a piece back, whichever side is called its length", () => {
    const mass = solveFor(massPerAreaOfPiece, "mass", "massPerArea");
    const size = { min: 1, max: 900 };
    fc.assert(
      fc.property(fc.integer(size), fc.integer(size), fc.integer(size), (weight, long, wide) => {
        const [length, width] = [metres(long / 8), metres(wide / 8)];
        const massPerArea = massPerAreaOfPiece({ mass: grams(weight), length, width });
        expect(massPerAreaOfPiece({ mass: grams(weight), length: width, width: length }).in(gramsPerSquareMetre)).toBe(
          massPerArea.in(gramsPerSquareMetre),
        );
        expect(mass({ massPerArea, length, width }).in(grams)).toBeCloseTo(weight, 9);
      }),
    );
  });

  it("is refused for a piece of nothing", () => {
    const given = { mass: pounds(1), length: yards(1), width: yards(1) };
    expect(() => massPerAreaOfPiece({ ...given, mass: pounds(0) })).toThrow("more than 0");
    expect(() => massPerAreaOfPiece({ ...given, width: yards(0) })).toThrow("more than 0");
  });
});
