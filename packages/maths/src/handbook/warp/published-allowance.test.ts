import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { compare } from "../../engine/quantity/index.js";
import type { Quantity, Unit } from "../../engine/quantity/index.js";
import { feet, inches, percentAdded, percentLost, percentOf } from "../../units/index.js";
import { publishedAllowance } from "./published-allowance.js";
import type { AllowanceName } from "./published-allowance.js";

type Row = readonly [name: AllowanceName, prints: string, from: string, to: string, unit: Unit<string>];

const rows: readonly Row[] = [
  ["loom waste, rigid heddle, direct warping", "18-22 in", "18", "22", inches],
  ["loom waste, rigid heddle, indirect warping", "22-26 in", "22", "26", inches],
  ["loom waste, rigid heddle, generous", "2 ft", "2", "2", feet],
  ["loom waste, table loom, generous", "3 ft", "3", "3", feet],
  ["loom waste, floor loom, generous", "5 to 6 ft", "5", "6", feet],
  ["loom waste, floor loom", "roughly 36 in; allows 60 in", "36", "60", inches],
  ["loom waste, any loom", "generally about 27 in; adds 36 in", "27", "36", inches],
  ["loom waste, two patterns for towels", "25.5 in with fringe; 20 in", "20", "25.5", inches],
  ["loom waste and take-up, scarf", "20-24 in", "20", "24", inches],
  ["shrinkage, wool, moderate washing", "10 % to 20 %", "10", "20", percentLost],
  ["take-up and shrinkage together, beginners", "10 % to 15 %", "10", "15", percentAdded],
  ["crimp of the warp, poplin", "14 %", "14", "14", percentAdded],
  ["crimp of the weft, poplin", "2 %", "2", "2", percentAdded],
  ["length of warp over cloth, jute", "10 % in length", "10", "10", percentAdded],
  ["width in the reed over cloth of 37 inches, jute", "2 in in width", "2", "2", inches],
  ["length and width, where neither matters much", "10 percent", "10", "10", percentAdded],
  ["shrinkage, half-waffle of 8/2 cotton", "18 %", "18", "18", percentLost],
  ["length over woven, plain weave, hole-and-slot loom", "20 to 25 cm on 100", "20", "25", percentAdded],
  ["length over woven, warp rep, hole-and-slot loom", "5 to 10 cm on 100", "5", "10", percentAdded],
  ["free share of a dent, power-loom reed", "60 %", "60", "60", percentOf],
  ["eye of a knitted cotton heald", "quarter inch", "0.25", "0.25", inches],
];

describe("published allowances", () => {
  for (const [name, prints, from, to, unit] of rows) {
    const { source, at } = publishedAllowance(name);
    cited(name, published(source, at, prints, to), publishedAllowance, [name], ["to", unit]);
    it(`${name}: from ${from} up`, () => {
      expect((publishedAllowance(name).from as { in(unit: Unit<string>): number }).in(unit)).toBe(Number(from));
    });
  }

  const names: readonly string[] = rows.map(([name]) => name);

  it("reach from something above zero to no less, by a source with a year and a place in print", () => {
    for (const [name, , , , unit] of rows) {
      const { from, to, source, at } = publishedAllowance(name) as {
        from: Quantity<string>;
        to: Quantity<string>;
        source: { year: string };
        at: string;
      };
      expect([name, compare(from, to) <= 0, from.in(unit) > 0]).toEqual([name, true, true]);
      expect([source.year, at]).not.toContain("");
    }
  });

  it("are refused by the name cut short, in capitals, or put after another", () => {
    const name = fc.constantFrom(...names);
    const cut = fc.tuple(name, fc.nat({ max: 60 })).map(([one, length]) => one.slice(0, length));
    const changed = name.map((one) => one.toUpperCase());
    const two = fc.tuple(name, name).map((both) => both.join(""));
    fc.assert(
      fc.property(fc.oneof(cut, changed, two), (text) => {
        expect(codesOf(publishedAllowance, text)).toEqual(names.includes(text) ? [] : ["unknown-word name"]);
      }),
    );
  });

  it.each(["", "constructor", "__proto__", "toString"])("are refused by the name %j, which no source has", (name) => {
    expect(codesOf(publishedAllowance, name)).toEqual(["unknown-word name"]);
  });

  it("are refused without a name, and by any other name, which is told", () => {
    expect(codesOf(publishedAllowance, undefined)).toEqual(["missing name"]);
    expect(() => publishedAllowance("loom waste" as never)).toThrow('received the text "loom waste"');
  });
});
