import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { grams, percentAdded, percentOf } from "../../units/index.js";
import { fibreShareByConditionedMass } from "./fibre-share-by-conditioned-mass.js";
import { fibreShareByDryMass } from "./fibre-share-by-dry-mass.js";

describe("the share of a fibre by conditioned mass", () => {
  // 100 g and 16 % are 116, 100 g and 8.5 % are 108.5: 116 ÷ 224.5 and 108.5 ÷ 224.5.
  const [wool, cotton] = [percentAdded(16), percentAdded("8.5")];
  cited(
    "100 g of wool beside 100 g of cotton, with agreed regains",
    byHand(commonPractice, "116000/2245"),
    fibreShareByConditionedMass,
    [{ fibre: grams(100), regain: wool, others: [grams(100)], otherRegains: [cotton] }],
    percentOf,
  );
  cited(
    "100 g of cotton beside 100 g of wool, with agreed regains",
    byHand(commonPractice, "108500/2245"),
    fibreShareByConditionedMass,
    [{ fibre: grams(100), regain: cotton, others: [grams(100)], otherRegains: [wool] }],
    percentOf,
  );

  it("is the share by dry mass where every fibre has the same regain", () => {
    const mass = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(mass, mass, fc.integer({ min: 0, max: 30 }), (one, other, per) => {
        const [fibre, others, regain] = [grams(one), [grams(other)], percentAdded(per)];
        const conditioned = fibreShareByConditionedMass({ fibre, regain, others, otherRegains: [regain] });
        expect(conditioned.in(percentOf)).toBeCloseTo(fibreShareByDryMass({ fibre, others }).in(percentOf), 10);
      }),
    );
  });

  it("is the whole piece where there is no other fibre", () => {
    const alone = { fibre: grams(60), regain: percentAdded("8.5"), others: [], otherRegains: [] };
    expect(fibreShareByConditionedMass(alone).in(percentOf)).toBe(100);
  });

  it("is refused where a regain is left out for one of the others", () => {
    const short = { fibre: grams(1), regain: percentAdded(1), others: [grams(1)], otherRegains: [] };
    expect(() => fibreShareByConditionedMass(short)).toThrow("otherRegains");
  });
});
