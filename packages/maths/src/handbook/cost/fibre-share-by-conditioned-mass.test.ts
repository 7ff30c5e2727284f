import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { grams, percentAdded, percentOf } from "../../units/index.js";
import { fibreShareByConditionedMass } from "./fibre-share-by-conditioned-mass.js";
import { fibreShareByDryMass } from "./fibre-share-by-dry-mass.js";

describe("the share of a fibre by conditioned mass", () => {
  it("weighs each dry mass with its own agreed regain", () => {
    // By hand: 100 g and 16 % are 116, 100 g and 8.5 % are 108.5; 116 ÷ 224.5 and 108.5 ÷ 224.5.
    const [wool, cotton] = [grams(100), grams(100)];
    const regains = [percentAdded(16), percentAdded("8.5")] as const;
    const ofWool = { fibre: wool, regain: regains[0], others: [cotton], otherRegains: [regains[1]] };
    const ofCotton = { fibre: cotton, regain: regains[1], others: [wool], otherRegains: [regains[0]] };
    expect(fibreShareByConditionedMass(ofWool).in(percentOf)).toBeCloseTo(11600 / 224.5, 10);
    expect(fibreShareByConditionedMass(ofCotton).in(percentOf)).toBeCloseTo(10850 / 224.5, 10);
  });

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
