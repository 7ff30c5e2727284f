import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastTime } from "#ci/processor-time.js";
import { equal } from "../../engine/quantity/index.js";
import {
  centimetres,
  feet,
  grams,
  inches,
  lengthFrom,
  lengthReading,
  massFrom,
  massReading,
  metres,
} from "../index.js";
import { ounces, pounds, yards } from "../index.js";

const trade = [yards, feet, inches];

describe("a length as people write it", () => {
  it.each([
    ["2 yd 6 in", 78],
    ["2yd 6in", 78],
    [`6'6"`, 78],
    ["6 ft 6 in", 78],
    [`7'-9"`, 93],
    ["3 1/2 in", 3.5],
    ["3-1/2 in", 3.5],
    ["3½ in", 3.5],
    ["3 ½ inches", 3.5],
    ["3 1⁄2 in", 3.5],
    ["3.5 in", 3.5],
    ["½ in", 0.5],
    ["27 inches", 27],
    ["1 Yard", 36],
    ["-1 ft 2 in", -14],
    ["− 1 in", -1],
    ["0 in", 0],
    ["5′ 3″", 63],
  ])("%s is %d inches", (text, expected) => {
    expect(lengthFrom(text, trade).in(inches)).toBe(expected);
  });

  it.each([
    ["1/2 3 in", "ambiguous"],
    [`5' 3/4`, "ambiguous"],
    ["1-1-1/2in", "ambiguous"],
    ["12", "ambiguous"],
    ["3 in 2 ft", "ambiguous"],
    ["3 in 2 in", "ambiguous"],
    ["1 ft -2 in", "ambiguous"],
    ["4,500 in", "unreadable"],
    ["1/0 in", "unreadable"],
    ["", "empty"],
    ["   ", "empty"],
    ["NaN in", "unreadable"],
    ["Infinity", "unreadable"],
    ["..", "unreadable"],
    [",,", "unreadable"],
    ["1.2.3 in", "unreadable"],
    ["3 in\u0000", "unreadable"],
    ["3 <b>in</b>", "unreadable"],
    ["1e999 in", "unknown-unit"],
    ["3 ells", "unknown-unit"],
    ["3 __proto__", "unreadable"],
  ])("%j is refused as %s", (text, code) => {
    const found = lengthReading(text, trade);
    expect(found.ok ? "read" : found.faults[0].code).toBe(code);
  });

  it("reads commas only in a locale that is named", () => {
    expect(lengthFrom("68,5 cm", [centimetres], { locale: "de" }).in(centimetres)).toBe(68.5);
    expect(lengthFrom("1.234,5 cm", [centimetres], { locale: "de" }).in(centimetres)).toBe(1234.5);
    expect(lengthFrom("4,500 in", [inches], { locale: "en" }).in(inches)).toBe(4500);
    expect(() => lengthFrom("4,50 in", [inches], { locale: "en" })).toThrow('as the locale "en" has them');
    expect(() => lengthFrom("68,5 cm", [centimetres])).toThrow("name the locale");
  });

  it("reads a mass the same way", () => {
    expect(massFrom("1 lb 8 oz", [pounds, ounces]).in(ounces)).toBe(24);
    expect(massFrom("1/2 lb", [pounds, ounces]).in(ounces)).toBe(8);
    expect(massReading("27 in", [grams]).ok).toBe(false);
  });

  it("printed and read again is the same length", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(yards, feet, inches, metres, centimetres),
        fc.integer({ min: -9999, max: 99999 }),
        (unit, n) => {
          const length = unit(n / 16);
          expect(equal(lengthFrom(String(length), [unit]), length)).toBe(true);
        },
      ),
    );
  });

  it("never answers any text with NaN, a crash or a part dropped", () => {
    const marks = fc.constantFrom(
      "1",
      "2",
      "12",
      "½",
      "/",
      "⁄",
      "-",
      "−",
      ".",
      ",",
      " ",
      "in",
      "ft",
      "'",
      '"',
      "yd",
      "e",
      "%",
    );
    const text = fc.array(marks, { maxLength: 12 }).map((parts) => parts.join(""));
    fc.assert(
      fc.property(fc.oneof(text, fc.string()), (given) => {
        const found = lengthReading(given, trade);
        if (!found.ok) return;
        expect(Number.isFinite(found.value.in(inches))).toBe(true);
        const digits = given.replace(/[^\d½]/gu, "");
        expect(digits).not.toBe("");
      }),
      { numRuns: 2000 },
    );
  });

  it("refuses a megabyte at once", () => {
    for (const text of ["9".repeat(1_000_000), "1 ft ".repeat(200_000), "½".repeat(1_000_000), " ".repeat(1_000_000)]) {
      expect(lengthReading(text, trade).ok).toBe(false);
      expect(leastTime(() => lengthReading(text, trade))).toBeLessThan(50);
    }
  });

  it("refuses units that are none, none at all, or of another kind", () => {
    for (const units of [[], ["in"], [grams], undefined])
      expect(() => lengthFrom("3 in", units as never)).toThrow("a list of units of length");
  });
});
