import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { lisaKay2013 } from "#ci/sources.js";
import { dentsPerInch, dentsPerTenCentimetres, endsPerCentimetre, endsPerInch } from "../../units/index.js";
import { exactSley } from "./exact-sley.js";
import { settOfSley } from "./sett-of-sley.js";

describe("the exact sley for a wanted sett", () => {
  cited(
    "18 to the inch in a 12-dent reed",
    published(lisaKay2013, "whole post", "1-2-1-2", "1-2"),
    exactSley,
    [{ reed: dentsPerInch(12), sett: endsPerInch(18), mostDents: 8 }],
    "order",
  );
  it("of 16 to the inch in a 10-dent reed is 8 ends in 5 dents, spread evenly", () => {
    const sley = exactSley({ reed: dentsPerInch(10), sett: endsPerInch(16), mostDents: 10 });
    expect(sley).toMatchObject({ ends: 8, dents: 5, order: "1-2-1-2-2", endsInEachDent: [1, 2, 1, 2, 2] });
    expect(sley.says).toBe("1 in every dent and one more in 3 of every 5 dents.");
  });
  it("of 12 in a 10-dent reed has one dent of two in every five", () => {
    expect(exactSley({ reed: dentsPerInch(10), sett: endsPerInch(12), mostDents: 5 }).order).toBe("1-1-1-1-2");
  });
  it("of twice the reed is two in every dent, and of a third of it one dent in three", () => {
    const even = exactSley({ reed: dentsPerInch(10), sett: endsPerInch(20), mostDents: 5 });
    expect([even.order, even.says]).toEqual(["2", "2 in every dent."]);
    expect(exactSley({ reed: dentsPerInch(12), sett: endsPerInch(4), mostDents: 5 }).order).toBe("0-0-1");
  });
  it("reads setts and reeds of two countries", () => {
    const sley = exactSley({ reed: dentsPerTenCentimetres(50), sett: endsPerCentimetre("7.5"), mostDents: 5 });
    expect(sley.order).toBe("1-2");
  });
  it("gives the sett wanted in the fewest dents, its ends spread to within one of each other", () => {
    const upTo = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(upTo, upTo, (reed, sett) => {
        const input = { reed: dentsPerInch(reed), sett: endsPerInch(sett), mostDents: 60 };
        const { ends, dents, endsInEachDent, order, steps } = exactSley(input);
        expect(ends * reed).toBe(sett * dents);
        for (let fewer = 1; fewer < dents; fewer += 1) expect((sett * fewer) % reed).not.toBe(0);
        expect(endsInEachDent.reduce((total, one) => total + one, 0)).toBe(ends);
        expect(Math.max(...endsInEachDent) - Math.min(...endsInEachDent)).toBeLessThanOrEqual(1);
        expect(order).toBe(endsInEachDent.join("-"));
        expect(steps.map(({ input: given }) => settOfSley(given).in(endsPerInch))).toEqual([sett]);
      }),
      { numRuns: 40 },
    );
  });
  it("is found in just as many dents as are allowed, up to a hundred of them", () => {
    // 10 and 16 share the factor 2, so 5 dents are the fewest; 100 and 101 share none, so 100 are.
    const five = { reed: dentsPerInch(10), sett: endsPerInch(16), mostDents: 5 };
    expect(exactSley(five).dents).toBe(5);
    expect(codesOf(exactSley, { ...five, mostDents: 4 })).toEqual(["no-answer"]);
    const hundred = exactSley({ reed: dentsPerInch(100), sett: endsPerInch(101), mostDents: 100 });
    expect([hundred.ends, hundred.dents, hundred.says]).toEqual([
      101,
      100,
      "1 in every dent and one more in 1 of every 100 dents.",
    ]);
  });
  it("is refused where no order is short enough, with where to look next", () => {
    const input = { reed: dentsPerInch(10), sett: endsPerInch(16), mostDents: 4 };
    expect(() => exactSley(input)).toThrow(/order of 4 dents or fewer.*substituteReeds/u);
    expect(codesOf(exactSley, { ...input, mostDents: 101 })).toEqual(["out-of-range mostDents"]);
    expect(codesOf(exactSley, { ...input, mostDents: 0 })).toEqual(["out-of-range mostDents"]);
    expect(codesOf(exactSley, { ...input, sett: dentsPerInch(16) })).toEqual(["wrong-kind sett"]);
  });
});
