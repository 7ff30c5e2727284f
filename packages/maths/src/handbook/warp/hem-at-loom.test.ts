import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "../../sources/index.js";
import { centimetres, inches, percentLost } from "../../units/index.js";
import { wovenLength } from "./woven-length.js";
import { hemAtLoom } from "./hem-at-loom.js";

describe("a hem at the loom", () => {
  cited(
    "of an inch and a quarter, a tenth lost in finishing",
    byHand(commonPractice, "25/18"),
    hemAtLoom,
    [{ hemEachEnd: inches("1.25"), loomToFinished: percentLost(10) }],
    inches,
  );

  it("is half of what hems add to the woven length of a piece", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 90 }), (hem, lost) => {
        const given = { hemEachEnd: centimetres(hem), loomToFinished: percentLost(lost) };
        const bare = wovenLength({ ...given, finishedLength: centimetres(50), hemEachEnd: centimetres(0) });
        const hemmed = wovenLength({ ...given, finishedLength: centimetres(50) });
        expect(hemmed.in(centimetres) - bare.in(centimetres)).toBeCloseTo(2 * hemAtLoom(given).in(centimetres), 6);
      }),
    );
  });
  it("is nothing where none is turned under, and is refused of a cloth that loses all", () => {
    expect(hemAtLoom({ hemEachEnd: inches(0), loomToFinished: percentLost(10) }).in(inches)).toBe(0);
    expect(() => hemAtLoom({ hemEachEnd: inches(1), loomToFinished: percentLost(100) })).toThrow("less than 100 %");
  });
});
