import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { lisaKay2013 } from "#ci/sources.js";
import { dentsPerInch, dentsPerTenCentimetres, endsPerCentimetre, endsPerInch } from "../../units/index.js";
import { exactSley } from "./exact-sley.js";

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
  it("is refused where no order is short enough, with where to look next", () => {
    const input = { reed: dentsPerInch(10), sett: endsPerInch(16), mostDents: 4 };
    expect(() => exactSley(input)).toThrow(/order of 4 dents or fewer.*substituteReeds/u);
    expect(() => exactSley({ ...input, mostDents: 101 })).toThrow("mostDents");
    expect(() => exactSley({ ...input, mostDents: 0 })).toThrow("mostDents");
    expect(() => exactSley({ ...input, sett: dentsPerInch(16) as never })).toThrow("sett");
  });
});
