import { describe, expect, it } from "vitest";
import { grams, percentAdded, percentOf } from "../../units/index.js";
import { fibreShareByConditionedMass } from "./fibre-share-by-conditioned-mass.js";
import { fibreShareByDryMass } from "./fibre-share-by-dry-mass.js";

describe("the share of a fibre", () => {
  it("by dry mass and by conditioned mass, all shares together the whole piece", () => {
    const [wool, cotton] = [grams(100), grams(100)];
    expect(fibreShareByDryMass({ fibre: wool, others: [cotton] }).in(percentOf)).toBe(50);
    const regains = [percentAdded(16), percentAdded("8.5")] as const;
    const one = { fibre: wool, regain: regains[0], others: [cotton], otherRegains: [regains[1]] };
    const other = { fibre: cotton, regain: regains[1], others: [wool], otherRegains: [regains[0]] };
    const shares = [one, other].map((input) => fibreShareByConditionedMass(input).in(percentOf));
    expect(shares[0]).toBeCloseTo(11600 / 224.5, 10);
    expect((shares[0] ?? 0) + (shares[1] ?? 0)).toBeCloseTo(100, 10);
  });
  it("counts the yarn left in the piece", () => {
    // 9 g of 150 g cut off as thrums, all of it cotton.
    expect(fibreShareByDryMass({ fibre: grams(60), others: [grams(81)] }).in(percentOf)).toBeCloseTo(6000 / 141, 10);
  });
});
