import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited, published } from "#ci/cited.js";
import { commonPractice, taylor1909 } from "#ci/sources.js";
import { cottonCount, endsPerInch, pounds, tex, yards } from "../../units/index.js";
import { yarnMass } from "../yarn/yarn-mass.js";
import { massForCount } from "./mass-for-count.js";
import { massForSett } from "./mass-for-sett.js";

/** 20 inches of 93 ends, 102 yards long: 189,720 yards of 45s, 5 lb as Taylor has it. */
const old = yarnMass({ length: yards(189_720), count: cottonCount(45) });

describe("the mass of another count", () => {
  cited(
    "the proof of a heavier cloth: 62 ends for 93, then 20s for 45s",
    published(taylor1909, "ch. XII, pp. 344-345", "7 1/2", "527/70", "told to the half pound; 7.53"),
    massForCount,
    [
      {
        mass: massForSett({ mass: old, sett: endsPerInch(93), newSett: endsPerInch(62) }),
        count: cottonCount(45),
        newCount: cottonCount(20),
      },
    ],
    pounds,
  );
  cited(
    "6 pounds of 20s, now 24s",
    byHand(commonPractice, "5"),
    massForCount,
    [{ mass: pounds(6), count: cottonCount(20), newCount: cottonCount(24) }],
    pounds,
  );

  it("is the mass there was where the count stays, and half of it where the count doubles", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), (many) => {
        const count = cottonCount(many);
        expect(massForCount({ mass: pounds(6), count, newCount: count }).in(pounds)).toBe(6);
        expect(massForCount({ mass: pounds(6), count, newCount: cottonCount(2 * many) }).in(pounds)).toBe(3);
      }),
    );
  });

  it("is refused for a count of the other kind", () => {
    const direct = { mass: pounds(1), count: tex(20) as never, newCount: cottonCount(20) };
    expect(() => massForCount(direct)).toThrow("indirect count");
  });
});
