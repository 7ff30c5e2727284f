import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited, published } from "#ci/cited.js";
import { commonPractice, taylor1909 } from "../../sources/index.js";
import { cottonCount, endsPerInch, picksPerInch, pounds, tex, yards } from "../../units/index.js";
import { yarnMass } from "../yarn/yarn-mass.js";
import { massForCount } from "./mass-for-count.js";
import { massForSett } from "./mass-for-sett.js";
import { picksForWeight } from "./picks-for-weight.js";

/** 20 inches of 93 ends, 102 yards long: 189,720 yards of 45s, 5 lb as Taylor has it. */
const old = yarnMass({ length: yards(189_720), count: cottonCount(45) });

describe("a changed cloth", () => {
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
    "5 pounds at 60 to the inch, now 72",
    byHand(commonPractice, "6"),
    massForSett,
    [{ mass: pounds(5), sett: endsPerInch(60), newSett: endsPerInch(72) }],
    pounds,
  );
  cited(
    "6 pounds of 20s, now 24s",
    byHand(commonPractice, "5"),
    massForCount,
    [{ mass: pounds(6), count: cottonCount(20), newCount: cottonCount(24) }],
    pounds,
  );
  cited(
    "a cloth of 10 lb with 93 threads to the inch made to weigh 15, the weft as the warp",
    published(taylor1909, "ch. XII, pp. 343-344", "62", "62"),
    picksForWeight,
    [{ picks: picksPerInch(93), mass: pounds(10), newMass: pounds(15) }],
    picksPerInch,
  );

  it("weighs the same where twice the ends are of twice the count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 90 }), (sett, count) => {
        const closer = massForSett({ mass: pounds(6), sett: endsPerInch(sett), newSett: endsPerInch(2 * sett) });
        const finer = massForCount({ mass: closer, count: cottonCount(count), newCount: cottonCount(2 * count) });
        expect(finer.in(pounds)).toBe(6);
        const picks = picksForWeight({ picks: picksPerInch(sett), mass: pounds(6), newMass: closer });
        expect(picks.in(picksPerInch)).toBe(sett / 2);
      }),
    );
  });

  it("is refused for no mass, no sett, and a count of the other kind", () => {
    const sett = endsPerInch(60);
    expect(() => massForSett({ mass: pounds(0), sett, newSett: sett })).toThrow("more than 0");
    expect(() => massForSett({ mass: pounds(1), sett, newSett: endsPerInch(0) })).toThrow("more than 0");
    const direct = { mass: pounds(1), count: tex(20) as never, newCount: cottonCount(20) };
    expect(() => massForCount(direct)).toThrow("indirect count");
  });
});
