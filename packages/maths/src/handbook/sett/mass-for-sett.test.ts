import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { cottonCount, endsPerInch, picksPerInch, pounds } from "../../units/index.js";
import { massForCount } from "./mass-for-count.js";
import { massForSett } from "./mass-for-sett.js";
import { picksForWeight } from "./picks-for-weight.js";

describe("a changed cloth", () => {
  cited(
    "5 pounds at 60 to the inch, now 72",
    byHand(commonPractice, "6"),
    massForSett,
    [{ mass: pounds(5), sett: endsPerInch(60), newSett: endsPerInch(72) }],
    pounds,
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

  it("is refused for no mass and no sett", () => {
    const sett = endsPerInch(60);
    expect(() => massForSett({ mass: pounds(0), sett, newSett: sett })).toThrow("more than 0");
    expect(() => massForSett({ mass: pounds(1), sett, newSett: endsPerInch(0) })).toThrow("more than 0");
  });
});
