import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { asText } from "../working/index.js";
import { attempt } from "../refusal.js";
import {
  centimetres,
  currency,
  feet,
  grams,
  inches,
  lengthFrom,
  ounces,
  percentAdded,
  percentLost,
  percentOf,
  pounds,
  yards,
} from "../../units/index.js";
import { equal, inUnit } from "./index.js";

describe("a quantity written out", () => {
  it.each<[string, string]>([
    [asText(inUnit(inches(7), centimetres)), "17.78 cm"],
    [asText(inUnit(grams(1), ounces)), "0.035274 oz"],
    [asText(inches(1)), "1 in"],
    [asText(inches("1234567.25")), "1234567 in"],
    [asText(inches(252), { unit: yards }), "7 yd"],
    [asText(inches("252.25"), { unit: [yards, inches], step: "1/4" }), "7 yd 1/4 in"],
    [asText(ounces(27), { unit: [pounds, ounces] }), "1 lb 11 oz"],
    [asText(ounces("31.9"), { unit: [pounds, ounces] }), "2 lb"],
    [asText(ounces("31.9"), { unit: [pounds, ounces], rounding: "roundDown" }), "1 lb 15 oz"],
    [asText(inches("-18.5"), { unit: [feet, inches], step: "1/2" }), "-1 ft 6 1/2 in"],
    [asText(inches(0), { unit: [yards, inches] }), "0 in"],
    [asText(currency("GBP")("1234.5"), { decimals: 2 }), "1234.50 GBP"],
    [asText(currency("EUR")("1234.5"), { decimals: 2, locale: "de" }), "1.234,50 EUR"],
    [asText(inches("1234567.25"), { digits: 9, locale: "en-GB" }), "1,234,567.25 in"],
    [asText(inches("7.126"), { digits: 3 }), "7.13 in"],
    [asText(inches("7.121"), { digits: 3, rounding: "roundUp" }), "7.13 in"],
    [asText(inches("-7.121"), { decimals: 2, rounding: "roundUp" }), "-7.12 in"],
    [asText(inches("-7.121"), { decimals: 2, rounding: "roundDown" }), "-7.13 in"],
    [asText(inches("-0.001"), { decimals: 2 }), "0.00 in"],
    [asText(inches("1000.5"), { step: "1/2", locale: "de" }), "1.000 1/2 in"],
    [asText(percentLost(8)), "8 % lost"],
    [asText(percentAdded("6.25"), { decimals: 1 }), "6.3 % added"],
    [asText(percentOf(80), { step: "1" }), "80 % of a whole"],
    [String(percentLost(8)), "8 % lost"],
  ])("%s is %s", (text, wanted) => {
    expect(text).toBe(wanted);
  });

  it.each<[unknown, string, string]>([
    [{ round: "up" }, "unknown-field", "round"],
    [{ step: "1", digits: 3 }, "wrong-kind", "step"],
    [{ digits: 0 }, "wrong-kind", "digits"],
    [{ decimals: 1.5 }, "wrong-kind", "decimals"],
    [{ unit: grams }, "wrong-kind", "unit"],
    [{ unit: "yards" }, "unknown-unit", "unit"],
    [{ unit: [] }, "wrong-kind", "unit"],
    [{ rounding: "up" }, "unknown-word", "rounding"],
  ])("with %j is refused as %s", (options, code, field) => {
    const read = attempt(asText, inches(1), options);
    expect(read.ok ? "written" : read.faults[0]).toMatchObject({ code, function: "asText", path: [field] });
  });

  it("in parts is the same amount, read back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (eighths) => {
        const length = inches(String(eighths / 8));
        const text = asText(length, { unit: [yards, feet, inches], step: "1/8" });
        expect(equal(lengthFrom(text, [yards, feet, inches]), length)).toBe(true);
      }),
    );
  });

  it("carries no more than six figures of what is not exact", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 9e5, noNaN: true }), (amount) => {
        const digits = asText(inches(amount)).replace(/\D/gu, "").replace(/^0+/u, "");
        expect(digits.length).toBeLessThanOrEqual(6);
      }),
    );
  });
});
