import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  astmD2260,
  blanco1917,
  brooks1892,
  brooksWoollen,
  centralOhio,
  countSystems,
  countTable,
  davis1920,
  groenKennisnet,
  sizes,
  taylor1909,
  wolfensberger1921,
} from "../../sources/index.js";
import {
  alloaOf240,
  alloaOf480,
  americanAsbestosCut,
  britishAsbestosCount,
  cottonCount,
  denier,
  dramSilk,
  frenchCottonCount,
  galashielsCut,
  grainsPer120Yards,
  grainsPer20Yards,
  hawickCut,
  internationalDenier,
  juteCount,
  leicesterCount,
  linenCount,
  metricCount,
  milanDenier,
  oldEnglishDenier,
  tex,
  turinDenier,
  typp,
  woollenCut,
  woollenRun,
  worstedCount,
  yardsPerOunce,
  yardsPerPound,
  yorkshireSkein,
} from "../../units/index.js";
import { convertCount } from "./convert-count.js";

describe("the count systems", () => {
  cited(
    "one Alloa count of Davis",
    published(davis1920, "p. 37", "240", "240"),
    convertCount,
    [alloaOf240(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one Galashiels cut",
    published(davis1920, "p. 37", "200", "200"),
    convertCount,
    [galashielsCut(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one Galashiels cut, from its definition",
    published(blanco1917, "entry Counts", "200", "200"),
    convertCount,
    [galashielsCut(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one Yorkshire skein",
    published(countSystems, "list", "256", "256"),
    convertCount,
    [yorkshireSkein(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one Leicester count",
    published(davis1920, "p. 38", "176", "176"),
    convertCount,
    [leicesterCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one run in yards to the ounce",
    published(brooksWoollen, "art. 1", "100", "100"),
    convertCount,
    [woollenRun(1), yardsPerOunce],
    ["count", yardsPerOunce],
  );
  cited(
    "five run",
    published(brooksWoollen, "art. 1", "8000", "8000"),
    convertCount,
    [woollenRun(5), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one typp",
    published(sizes, "typp", "1000", "1000"),
    convertCount,
    [typp(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one American asbestos cut",
    published(countSystems, "list", "100", "100"),
    convertCount,
    [americanAsbestosCut(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one British asbestos count",
    published(countSystems, "list", "50", "50"),
    convertCount,
    [britishAsbestosCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one French cotton count",
    published(
      brooks1892,
      "Counts of Silk, Worsted",
      "992.4",
      "45359237/45720",
      "1000 m in 500 g with the exact yard and pound is 0.03 % lower",
    ),
    convertCount,
    [frenchCottonCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "20 French cotton",
    published(blanco1917, "site page 27", "20", "20"),
    convertCount,
    [metricCount(40), frenchCottonCount],
    ["count", frenchCottonCount],
  );
  cited(
    "10 French cotton",
    published(blanco1917, "site page 27", "10", "10"),
    convertCount,
    [metricCount(20), frenchCottonCount],
    ["count", frenchCottonCount],
  );
  cited(
    "one denier international",
    published(wolfensberger1921, "section 9, after p. 71", "", "0.1"),
    convertCount,
    [internationalDenier(1), tex],
    ["count", tex],
  );
  cited(
    "one dram of silk in tex",
    published(countTable, "direct table", "1.938", "45359237/23408640"),
    convertCount,
    [dramSilk(1), tex],
    ["count", tex],
  );
  cited(
    "one dram of silk in old denier",
    published(wolfensberger1921, "p. 69", "17.3", "52/3"),
    convertCount,
    [dramSilk(1), oldEnglishDenier],
    ["count", oldEnglishDenier],
  );
  cited(
    "40 lb jute",
    published(countTable, "Example 02", "1378", "226796185/164592"),
    convertCount,
    [juteCount(40), tex],
    ["count", tex],
  );
  cited(
    "one pound to the spyndle in tex",
    published(groenKennisnet, "table", "34.45", "45359237/1316736"),
    convertCount,
    [juteCount(1), tex],
    ["count", tex],
  );
  cited(
    "one pound to the spyndle in denier",
    published(groenKennisnet, "table", "310.03", "45359237/146304"),
    convertCount,
    [juteCount(1), denier],
    ["count", denier],
  );
  cited(
    "one pound to the spyndle in lea",
    published(groenKennisnet, "table", "48", "48"),
    convertCount,
    [juteCount(1), linenCount],
    ["count", linenCount],
  );
  cited(
    "one American grain",
    published(countTable, "direct table", "3.543", "6479891/1828800"),
    convertCount,
    [grainsPer20Yards(1), tex],
    ["count", tex],
  );
  cited(
    "one run in tex",
    published(astmD2260, "Table 1", "310.034", "45359237/146304"),
    convertCount,
    [woollenRun(1), tex],
    ["count", tex],
  );
  cited(
    "one worsted in runs",
    published(astmD2260, "Table 1", "0.35", "7/20"),
    convertCount,
    [worstedCount(1), woollenRun],
    ["count", woollenRun],
  );
  cited(
    "one Alloa count in tex",
    published(countTable, "indirect table", "1033", "226796185/219456"),
    convertCount,
    [alloaOf480(1), tex],
    ["count", tex],
  );
  cited(
    "one Hawick cut in tex",
    published(countTable, "indirect table", "2687", "589670081/219456"),
    convertCount,
    [hawickCut(1), tex],
    ["count", tex],
  );
  cited(
    "20 cotton in skeins",
    published(davis1920, "Ex. 7, p. 41", "65.6", "525/8"),
    convertCount,
    [cottonCount(20), yorkshireSkein],
    ["count", yorkshireSkein],
  );
  cited(
    "16 worsted in skeins",
    published(davis1920, "Ex. 33, p. 50", "35", "35"),
    convertCount,
    [worstedCount(16), yorkshireSkein],
    ["count", yorkshireSkein],
  );
  cited(
    "20 cotton in Galashiels cut",
    published(davis1920, "Ex. 34, p. 50", "84", "84"),
    convertCount,
    [cottonCount(20), galashielsCut],
    ["count", galashielsCut],
  );
  cited(
    "24 worsted in skeins",
    published(davis1920, "Ex. 40, p. 53", "52.5", "52.5"),
    convertCount,
    [worstedCount(24), yorkshireSkein],
    ["count", yorkshireSkein],
  );
  cited(
    "12 Galashiels cut in skeins",
    published(davis1920, "Ex. 8, p. 41", "9.4", "75/8"),
    convertCount,
    [galashielsCut(12), yorkshireSkein],
    ["count", yorkshireSkein],
  );
  cited(
    "40 old denier in yards to the ounce",
    published(taylor1909, "site pages 238-239", "6933 1/3", "20800/3"),
    convertCount,
    [oldEnglishDenier(40), yardsPerOunce],
    ["count", yardsPerOunce],
  );
  cited(
    "4 dram silk in yards to the ounce",
    published(taylor1909, "site page 239", "4000", "4000"),
    convertCount,
    [dramSilk(4), yardsPerOunce],
    ["count", yardsPerOunce],
  );

  cited(
    "one denier of Turin",
    published(wolfensberger1921, "section 9, after p. 71", "0.053 g on 476 m", "53/476"),
    convertCount,
    [turinDenier(1), tex],
    ["count", tex],
  );
  cited(
    "one denier of Milan",
    published(wolfensberger1921, "section 9, after p. 71", "0.051 g on 476 m", "3/28"),
    convertCount,
    [milanDenier(1), tex],
    ["count", tex],
  );
  cited(
    "one American grain of roving",
    published(astmD2260, "Table 1", "grains on 120 yd", "6479891/10972800"),
    convertCount,
    [grainsPer120Yards(1), tex],
    ["count", tex],
  );
  cited(
    "six cut wool",
    published(centralOhio, "yarn count note", "1800", "1800"),
    convertCount,
    [woollenCut(6), yardsPerPound],
    ["count", yardsPerPound],
  );

  it("are told apart where one name means two", () => {
    expect(convertCount(alloaOf480(1), alloaOf240).count.value).toBe("2");
    expect(convertCount(denier(1), oldEnglishDenier).count.in(oldEnglishDenier)).toBeCloseTo(0.99391, 4);
  });

  it("of woollen cut and lea are one length to the pound", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), (n) => {
        expect(convertCount(woollenCut(n), linenCount).count.value).toBe(String(n));
      }),
    );
  });

  it("refuse a count of nothing", () => {
    expect(() => convertCount(juteCount(0), tex)).toThrow(QuantityError);
  });
});
