import { describe, expect, it } from "vitest";
import { napkins as eight } from "#ci/napkins.js";
import {
  blendRegain,
  countFromWrapping,
  endsForWidth,
  foldedCount,
  partnerCount,
  settByDiameter,
  totalCover,
  warpLength,
} from "../../handbook/index.js";
import {
  centimetres,
  cottonCount,
  endsPerInch,
  grains,
  inches,
  metricCount,
  percentAdded,
  percentOf,
  yards,
  yardsPerPound,
} from "../../units/index.js";
import { asMarkdown, asText, explain } from "./index.js";

const napkins = { ...eight, loomWaste: yards(1) };

const byText = (a: string, b: string): number => a.localeCompare(b, "en");

function linesOf(text: string): readonly string[] {
  return text.split("\n").map((line) => line.trim());
}

describe("a working in text", () => {
  it("of a warp shows every line, the conversion and the numbers in it", () => {
    expect(linesOf(asText(explain(warpLength, napkins))).slice(7, -1)).toEqual([
      "loom waste: 1 yd × 36 = 36 in",
      "cut length = finished length + 2 × hem each end",
      "= 21 in + 2 × 1 in",
      "= 23 in",
      "on loom = pieces × cut length ÷ (1 − loom to finished)",
      "= 8 × 23 in ÷ (1 − 10 %)",
      "≈ 204.444 in",
      "thread in cloth = on loom ÷ (1 − take-up)",
      "= 204.444 in ÷ (1 − 8 %)",
      "≈ 222.222 in",
      "warp = thread in cloth + loom waste",
      "= 222.222 in + 36 in",
      "≈ 258.222 in",
    ]);
  });

  it("of a fold writes the sum out thread by thread, in the system of the first", () => {
    const text = asText(explain(foldedCount, { counts: [cottonCount(40), cottonCount(80), metricCount(120)] }));
    expect(linesOf(text)).toContain("counts: 120 Nm × 0.590541247448 ≈ 70.8649 Ne");
    expect(linesOf(text)).toContain("= 1 ÷ (1 ÷ 40 Ne + 1 ÷ 80 Ne + 1 ÷ 70.8649 Ne)");
  });

  it("of a weighing shows the pound in grains", () => {
    const text = asText(explain(countFromWrapping, { length: yards(120), mass: grains(20), system: cottonCount }));
    expect(linesOf(text)).toContain("system mass: 1 lb × 7000 = 7000 gr");
    expect(linesOf(text).at(-2)).toBe("= 50 Ne");
  });

  it("of ends for a width names the rounding and the ends", () => {
    const input = { sett: endsPerInch(20), widthInReed: centimetres(53), threadingRepeat: 8, balanceEnds: 1 };
    const lines = linesOf(asText(explain(endsForWidth, input)));
    expect(lines).toContain("width in reed: 53 cm ÷ 2.54 ≈ 20.8661 in");
    expect(lines).toContain("= roundUp((417.323 − 1) ÷ 8)");
    expect(lines.at(-2)).toBe("= 425 ends");
  });

  it("of a rule of thumb shows the square root", () => {
    const input = { constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 };
    const lines = linesOf(asText(explain(settByDiameter, input)));
    expect(lines).toContain("= 0.9 × √(3360 yd/lb)");
    expect(lines.at(-2)).toBe("≈ 26.0845 ends/in");
  });

  it("of a percentage tells every one in hundredths, those of a list and the answer too", () => {
    const half = { warpCover: percentOf("62.5"), weftCover: percentOf("62.5") };
    expect(linesOf(asText(explain(totalCover, half))).slice(3, -1)).toEqual([
      "total cover = warp cover + weft cover − warp cover × weft cover",
      "= 62.5 % + 62.5 % − 62.5 % × 62.5 %",
      "= 85.9375 %",
    ]);
    const blend = { shares: [percentOf(60), percentOf(40)], regains: [percentAdded("8.5"), percentAdded(13)] };
    expect(linesOf(asText(explain(blendRegain, blend))).slice(-3, -1)).toEqual([
      "= (60 % × 8.5 % + 40 % × 13 %) ÷ (60 % + 40 %)",
      "= 10.3 %",
    ]);
  });

  it("never shows a small number as nothing", () => {
    const lines = linesOf(asText(explain(foldedCount, { counts: [cottonCount("0.000012345678")] })));
    expect(lines.at(-2)).toBe("≈ 0.0000123457 Ne");
  });

  it("is refused as the calculation is", () => {
    expect(() => explain(partnerCount, { wanted: cottonCount(30), counts: [cottonCount(30)] })).toThrow("partnerCount");
  });
});

describe("anything but a working or a quantity", () => {
  it.each([undefined, null, 3, "x", {}, [], () => 3])("is not printed: %s is refused", (thing) => {
    expect(() => asText(thing as never)).toThrow("asText({ quantity }): expected a quantity");
    expect(() => asMarkdown(thing as never)).toThrow("expected a working");
  });

  it("is a quantity where a page of working is asked for", () => {
    expect(() => asMarkdown(inches(3) as never)).toThrow("asMarkdown(explain(calculation, input))");
  });
});

describe("a working in Markdown", () => {
  it("carries the same numbers as the text", () => {
    const working = explain(warpLength, napkins);
    const numbers = (text: string): readonly string[] => text.match(/\d+(?:\.\d+)?/gu) ?? [];
    const markdown = asMarkdown(working).replace(/^\d\. /gmu, "");
    expect([...numbers(markdown)].sort(byText)).toEqual([...numbers(asText(working))].sort(byText));
  });

  it("lets no mark of a text act", () => {
    const working = {
      ...explain(warpLength, napkins),
      name: "x",
      inputs: [{ key: "x", name: "<b>|*", value: "`1`", meaning: "[a](b)" }],
    };
    expect(asMarkdown(working)).not.toMatch(/<b>|`1`|\[a\]/u);
  });
});
