import { describe, expect, expectTypeOf, it } from "vitest";
import * as handbook from "../../handbook/index.js";
import { convertCount, reedWidth, warpLength } from "../../handbook/index.js";
import { currency, endsPerInch, inches, percentLost, yards } from "../../units/index.js";
import { solveFor } from "../solve/index.js";
import { isCalculation } from "../formula/index.js";
import type { AnyCalculation } from "../formula/index.js";
import { explain } from "../working/index.js";
import { difference, isQuantity, isUnit, sign, unitOf } from "./index.js";
import type { Quantity, Unit } from "./index.js";

describe("what a thing is", () => {
  it("the unit of an amount is the one it was made in, with its kind", () => {
    expect(unitOf(yards(2))).toBe(yards);
    expect(unitOf(currency("EUR")(3)).name).toBe("EUR");
    expectTypeOf(unitOf(percentLost(8))).toEqualTypeOf<Unit<"loss">>();
    expect(() => unitOf(JSON.parse(JSON.stringify(yards(2))) as never)).toThrow("quantityFrom");
    expect(() => unitOf(3 as never)).toThrow("a quantity");
  });

  it("a quantity is one, and neither its copy nor a number nor a unit is", () => {
    const unknown: unknown = yards(2);
    expect(isQuantity(unknown)).toBe(true);
    if (isQuantity(unknown)) expectTypeOf(unknown).toEqualTypeOf<Quantity<string>>();
    for (const other of [null, undefined, 3, "2 yd", yards, { ...yards(2) }, structuredClone({ ...yards(2) })])
      expect(isQuantity(other)).toBe(false);
    expect([yards, yards(2), warpLength].map(isUnit)).toEqual([true, false, false]);
  });

  it("a calculation is found among all of the handbook, and can be called", () => {
    const found: readonly AnyCalculation[] = Object.values(handbook).filter(isCalculation);
    expect(found).toContain(warpLength);
    expect(found.every(({ declaration }) => declaration.lines.length > 0)).toBe(true);
    const [width] = found.filter(({ declaration }) => declaration.name === "reedWidth");
    expect(String(width?.({ ends: 420, sett: endsPerInch(20) }))).toBe("21 in");
    expect(() => width?.({ ends: "420" })).toThrow("whole number");
    expect(isCalculation(solveFor(reedWidth, "ends", "width", { rounding: "roundDown" }))).toBe(true);
    for (const other of [yards, convertCount, explain, 3, null]) expect(isCalculation(other)).toBe(false);
  });

  it("the sign of an amount is read without a number", () => {
    expect([inches(3), inches(0), inches("-0.0000001")].map(sign)).toEqual([1, 0, -1]);
    expect(sign(difference(inches(3), inches(5)))).toBe(-1);
    expect(() => sign(3 as never)).toThrow("a quantity");
  });
});
