import { createContext, runInContext } from "node:vm";
import { beforeAll, describe, expect, it } from "vitest";
import { scriptBundle } from "#ci/sheets-script.mjs";
import { functions, parametersOf } from "./parameters.js";

/** What a script host may lack. */
const STRIPPED = `
delete globalThis.console; delete globalThis.Intl; delete globalThis.WebAssembly;
delete Array.prototype.at; delete Array.prototype.toSorted; delete Array.prototype.findLast;
delete Object.hasOwn; delete String.prototype.replaceAll;
Date.now = Math.random = () => { throw new Error("no clock, no chance"); };`;

describe("the script for a spreadsheet, in a host that has next to nothing", () => {
  let text = "";
  let context: object = {};
  beforeAll(async () => {
    text = await scriptBundle();
    context = createContext(Object.create(null) as object, { codeGeneration: { strings: false, wasm: false } });
    runInContext(STRIPPED, context);
    runInContext(text, context);
  }, 120_000);
  const cell = (formula: string): unknown => {
    const found: unknown = runInContext(`JSON.stringify(${formula})`, context);
    return JSON.parse(String(found));
  };
  const warp = '21, "inches", 1, "in", 10, "percent lost", 8, "% lost", 30, "in", "yards"';

  it("answers single cells in the unit asked for", () => {
    // (8 × 23 ÷ 0.9 ÷ 0.92 + 30) ÷ 36 = 2270 ÷ 324; 368 ÷ 20 = 18.4 in.
    expect(cell(`WARP_LENGTH(8, ${warp})`)).toBeCloseTo(2270 / 324, 12);
    expect(cell('REED_WIDTH(368, 20, "ends/in", "inches")')).toBe(18.4);
    expect(cell('COUNT_FROM_WRAPPING(120, "yards", 20, "grains", "cotton count")')).toBe(50);
  });

  it("keeps the shape of ranges, rows against columns, and leaves blanks blank", () => {
    const [first, second] = cell(`WARP_LENGTH([[8, "", 9]], ${warp.replace("21", "[[21], [20]]")})`) as number[][];
    expect([first?.length, second?.length, first?.[1], second?.[1]]).toEqual([3, 3, "", ""]);
    expect(first?.[0]).toBeCloseTo(2270 / 324, 12);
    // (9 × 22 ÷ 0.9 ÷ 0.92 + 30) ÷ 36 = 245/36 ÷ … by hand: 198 ÷ 0.828 = 239.1304…; + 30; ÷ 36 = 7.475845…
    expect(second?.[2]).toBeCloseTo((198 / 0.828 + 30) / 36, 12);
    expect(cell('FOLDED_COUNT([[40], [""], [40]], "cotton count", "cotton count")')).toBe(20);
  });

  it("passes the error of a cell on as itself", () => {
    expect(cell(`WARP_LENGTH([["#N/A"], [8]], ${warp})`)).toEqual([["#N/A"], [expect.any(Number)]]);
    expect(cell('FOLDED_COUNT([[40], ["#REF!"]], "cotton count", "cotton count")')).toBe("#REF!");
  });

  it.each([
    ['REED_WIDTH(368, 20, "ends/in", "inchs")', '"inchs". Write inches'],
    ['REED_WIDTH(368, 20, "ends/in", "grains")', '"grains", a unit of mass'],
    ['REED_WIDTH(368, 20, "", "inches")', "expected a unit of ends per length as text, received none"],
    ['REED_WIDTH("many", 20, "ends/in", "inches")', 'ends: expected a number, received the text "many"'],
    ['REED_WIDTH([[1], ["many"]], 20, "ends/in", "inches")', "Row 2, column 1: REED_WIDTH, ends"],
    ['REED_WIDTH([[1, 2]], [[1, 2, 3]], "ends/in", "inches")', "sett: a range of 1 × 3 does not fit; ends has 1 × 2"],
    ['REED_WIDTH(368, 20, [["ends/in"]], "inches")', "sett_unit: expected one cell"],
    ['REED_WIDTH(1.5, 20, "ends/in", "inches")', "a whole number"],
    [`WARP_LENGTH(8, ${warp.replace('"percent lost"', '"%"')})`, "percent lost"],
    ['THRUM_WORKING("REED_WIDHT", 1)', "REED_WIDTH"],
  ])("answers %s with what to do about it", (formula, says) => {
    expect(() => cell(formula)).toThrow(says);
  });

  it("shows the working as rows and names the slip in a claim", () => {
    const rows = cell(`THRUM_WORKING("WARP_LENGTH", 8, ${warp})`) as string[][];
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([4]));
    expect(rows.find(([name]) => name === "cut length")?.[2]).toBe("21 in + 2 × 1 in");
    expect(cell(`THRUM_CHECK("WARP_LENGTH", "7.01", 8, ${warp})`)).toEqual([["right: 7.01"]]);
    const [verdict, slip] = cell(`THRUM_CHECK("WARP_LENGTH", "6.94", 8, ${warp})`) as string[][];
    expect(verdict).toEqual(["not right: 7.01"]);
    expect(slip?.[0]).toContain("adds the 10 %");
  });

  it("has for every calculation a plain function whose help names every parameter within the length limits", () => {
    for (const [name, { declaration }] of functions) {
      expect(name).toMatch(/^[A-Z][A-Z_]{2,}$/u);
      expect(name.includes("_") || name.length > 3, `${name} is no cell address`).toBe(true);
      const at = text.indexOf(`\nfunction ${name}(`);
      expect(at, name).toBeGreaterThan(0);
      const help = text.slice(text.lastIndexOf("/**", at), at);
      expect(help).toContain("@customfunction");
      const named = [...help.matchAll(/@param \{[^ ]*\} (\w+) (.+)/gu)];
      expect(named.map(([, one]) => one)).toEqual(parametersOf(declaration).map((one) => one.name));
      for (const [, , words = ""] of named) expect(words.length).toBeLessThanOrEqual(250);
    }
  });

  it("imports nothing and is small enough for a script", () => {
    expect(text).not.toMatch(/^(?:import|export) /mu);
    // All formulas and units, about 1 kB a formula; some 40 kB of it are the operators by which the check makes wrong sums.
    expect(text.length).toBeLessThan(505_000);
  });
});
