import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { grams, percentOf } from "../../units/index.js";
import { fibreShareByDryMass } from "./fibre-share-by-dry-mass.js";

describe("the share of a fibre by dry mass", () => {
  it("is half where two fibres weigh the same", () => {
    expect(fibreShareByDryMass({ fibre: grams(100), others: [grams(100)] }).in(percentOf)).toBe(50);
  });

  // 9 g of 150 g cut off as thrums, all of it cotton.
  cited(
    "60 g of wool beside 81 g of cotton left in the piece",
    byHand(commonPractice, "6000/141"),
    fibreShareByDryMass,
    [{ fibre: grams(60), others: [grams(81)] }],
    percentOf,
  );
});

describe("the limits of fibre share by dry mass", () => {
  limits(
    fibreShareByDryMass,
    ["is the whole where nothing is mixed in", { fibre: grams(60), others: [] }, 100, percentOf],
    { fibre: grams(0), others: [grams(-1)] },
  );
});
