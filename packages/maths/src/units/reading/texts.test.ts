import { faultText } from "../../engine/refusal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactNumber } from "#ci/cited.js";
import { leastTimeOfCalls } from "#ci/processor-time.js";
import { equal } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import {
  centimetres,
  feet,
  grains,
  grams,
  inches,
  kilograms,
  kilometres,
  lengthFrom,
  lengthReading,
} from "../index.js";
import { massFrom, metres, millimetres, ounces, pounds, yards } from "../index.js";
import corpus from "./texts.json" with { type: "json" };

const trade = [yards, feet, inches];

/** "78" for what is read as 78 inches, or the code of the refusal. */
function readAs(text: string): string {
  const found = lengthReading(text, trade);
  return found.ok ? String(found.value.in(inches)) : found.faults[0].code;
}

describe("the corpus of texts", () => {
  it.each(corpus)("$text is read or refused as it stands in the corpus", (row) => {
    const expected = row.inches === undefined ? row.refused : String(exactNumber(row.inches));
    expect(readAs(row.text)).toBe(expected);
  });

  it("with any one character put in, taken out or changed is read as a finite length or refused with words", () => {
    const rows = fc.constantFrom(...corpus.map(({ text }) => text));
    const marks = fc.constantFrom(..."0123456789 .,/-−–½⅓'\"’”+%eE\u0000\u202e<&ainfty".split(""));
    fc.assert(
      fc.property(rows, marks, fc.nat({ max: 60 }), fc.nat({ max: 1 }), (text, mark, where, taken) => {
        const at = where % (text.length + 1);
        const found = lengthReading(text.slice(0, at) + mark + text.slice(at + taken), trade);
        if (found.ok) expect(Number.isFinite(found.value.in(inches))).toBe(true);
        else expect(found.faults[0].remedy).toMatch(/\w/u);
      }),
      { numRuns: 3000 },
    );
  });

  it("is refused in words that no screen acts upon, however hostile the text", () => {
    for (const { text, refused } of corpus) {
      if (refused === undefined) continue;
      const found = lengthReading(text, trade);
      const said = found.ok ? "" : found.faults.map(faultText).join(" ");
      expect(said).toContain("lengthFrom({ text })");
      expect(said).not.toMatch(/[\u0000-\u0009\u200b\u202e\ufeff]/u);
      expect(said.length).toBeLessThan(1000);
    }
  });
});

describe("an amount in parts", () => {
  const part = fc.record({ yd: fc.nat({ max: 40 }), ft: fc.nat({ max: 60 }), eighths: fc.nat({ max: 400 }) });
  const spellings = fc.constantFrom(
    ["yd", "ft", "in"] as const,
    [" yd", " ft", " in"] as const,
    [" yards", " feet", " inches"] as const,
    [" yd", "'", '"'] as const,
    [" Yards", "’", "”"] as const,
  );

  it("is the sum of all its parts, none dropped, however they are spelt and spaced", () => {
    fc.assert(
      fc.property(part, spellings, fc.constantFrom(" ", ""), fc.boolean(), ({ yd, ft, eighths }, units, gap, minus) => {
        const [whole, over] = [Math.floor(eighths / 8), eighths % 8];
        const inchText = over === 0 ? String(whole) : `${String(whole)} ${String(over)}/8`;
        const text = [`${String(yd)}${units[0]}`, `${String(ft)}${units[1]}`, `${inchText}${units[2]}`].join(gap);
        const exact = yd * 36 + ft * 12 + eighths / 8;
        expect(lengthFrom(`${minus ? "-" : ""}${text}`, trade).in(inches)).toBe(minus && exact !== 0 ? -exact : exact);
      }),
      { numRuns: 500 },
    );
  });

  it("is refused when a unit is left out of the list, named twice or out of order", () => {
    for (const units of [[inches], [yards], [feet, yards]])
      expect(lengthReading("1 yd 1 ft 1 in", units).ok).toBe(false);
    for (const text of ["1 ft 1 ft", "1 in 1 yd", "1 yd 1 in 1 ft"]) expect(lengthReading(text, trade).ok).toBe(false);
  });
});

describe("what we print", () => {
  it.each<readonly [string, readonly Unit<"length">[]]>([
    ["lengths", [yards, feet, inches, metres, centimetres, millimetres, kilometres]],
  ])("of %s reads back as the same, thirds and long decimals too", (_, units) => {
    for (const unit of units) {
      for (let n = 1; n < 200; n++) {
        const length = lengthFrom(`${String(n)}/7 ${unit.name}`, [unit]);
        expect(equal(lengthFrom(String(length), [unit]), length)).toBe(true);
      }
    }
  });

  it("of masses reads back as the same", () => {
    for (const unit of [pounds, ounces, grains, grams, kilograms]) {
      const mass = massFrom(`22/7 ${unit.name}`, [unit]);
      expect(equal(massFrom(String(mass), [unit]), mass)).toBe(true);
    }
  });
});

describe("the marks of a locale", () => {
  it.each([
    ["1.234,5 cm", "de", 1234.5],
    ["1,5 cm", "fr", 1.5],
    ["0,25 cm", "sv", 0.25],
    ["1,234.5 cm", "en-GB", 1234.5],
    ["12,345,678 cm", "en", 12345678],
    ["1.5 cm", "ja", 1.5],
  ])("read %s in %s", (text, locale, expected) => {
    expect(lengthFrom(text, [centimetres], { locale }).in(centimetres)).toBe(expected);
  });

  it.each([
    ["1.5 cm", "de"],
    ["1,23 cm", "en"],
    ["1,2345 cm", "en"],
    ["1234,567 cm", "en"],
    ["1.234.5 cm", "de"],
    ["1,2,3 cm", "de"],
    ["1,5 cm", "en"],
    ["5, cm", "de"],
  ])("do not read %s in %s", (text, locale) => {
    expect(lengthReading(text, [centimetres], { locale }).ok).toBe(false);
  });

  it("are refused for a locale that is none, even where the text has no mark", () => {
    for (const locale of ["", "xx-!!", "german", "tlh", "und", 3, {}, true]) {
      const found = lengthReading("5 cm", [centimetres], { locale: locale as string });
      expect(found.ok ? "read" : found.faults[0].function).toBe("locale");
    }
  });
});

describe("the time a text takes", () => {
  it("grows no faster than the text, up to the longest that is read", () => {
    const text = (parts: number): string => `1 ${"½".repeat(parts)} in`;
    const time = (parts: number): number => leastTimeOfCalls(() => lengthReading(text(parts), trade), 500);
    // Ten times the text: ten times the time, and as much again three times over for what else the machine does.
    expect(time(190)).toBeLessThan(40 * time(19));
  });
});
