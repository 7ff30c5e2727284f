import { describe, expect, it } from "vitest";
import { grams, percentOf } from "../../units/index.js";
import { fibreShareByDryMass } from "./fibre-share-by-dry-mass.js";

describe("the share of a fibre by dry mass", () => {
  it("is half where two fibres weigh the same", () => {
    expect(fibreShareByDryMass({ fibre: grams(100), others: [grams(100)] }).in(percentOf)).toBe(50);
  });

  it("counts the yarn left in the piece", () => {
    // 9 g of 150 g cut off as thrums, all of it cotton.
    expect(fibreShareByDryMass({ fibre: grams(60), others: [grams(81)] }).in(percentOf)).toBeCloseTo(6000 / 141, 10);
  });
});
