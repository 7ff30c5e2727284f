import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import {
  astmD2260,
  balasubramanianFactors,
  blanco1917,
  brooks1892,
  brooksWoollenCalculations,
  centralOhioWeavers,
  countConversionTex,
  countSystemsArticle,
  davis1920,
  dooley1914,
  eugeneTextileCenter2017,
  groenKennisnet,
  iso1144,
  silkMillGuide1920,
  sizesTypp,
  taylor1909,
  textileSchoolFormulas,
  tgeThreads,
  wcoHeading5205,
  wolfensberger1921,
} from "#ci/sources.js";
import {
  alloaOf240,
  alloaOf480,
  americanAsbestosCut,
  britishAsbestosCount,
  cottonCount,
  decitex,
  denier,
  dramSilk,
  frenchCottonCount,
  galashielsCut,
  grainsPer120Yards,
  grainsPer20Yards,
  hawickCut,
  internationalDenier,
  juteCount,
  kilotex,
  leicesterCount,
  linenCount,
  metricCount,
  milanDenier,
  oldEnglishDenier,
  spunSilkCount,
  tex,
  turinDenier,
  typp,
  westOfEnglandCount,
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
    "one Galashiels cut, by definition",
    published(blanco1917, "entry Counts", "200", "200"),
    convertCount,
    [galashielsCut(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one Yorkshire skein",
    published(countSystemsArticle, "list", "256", "256"),
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
    published(brooksWoollenCalculations, "art. 1", "100", "100"),
    convertCount,
    [woollenRun(1), yardsPerOunce],
    ["count", yardsPerOunce],
  );
  cited(
    "five run",
    published(brooksWoollenCalculations, "art. 1", "8000", "8000"),
    convertCount,
    [woollenRun(5), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one typp",
    published(sizesTypp, "typp", "1000", "1000"),
    convertCount,
    [typp(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one American asbestos cut",
    published(countSystemsArticle, "list", "100", "100"),
    convertCount,
    [americanAsbestosCut(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one British asbestos count",
    published(countSystemsArticle, "list", "50", "50"),
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
    published(wolfensberger1921, "section 9, after p. 71", "0.05 g on 500 m", "0.1"),
    convertCount,
    [internationalDenier(1), tex],
    ["count", tex],
  );
  cited(
    "one dram of silk in tex",
    published(countConversionTex, "direct table", "1.938", "45359237/23408640"),
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
    published(countConversionTex, "Example 02", "1378", "226796185/164592"),
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
    published(countConversionTex, "direct table", "3.543", "6479891/1828800"),
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
    published(countConversionTex, "indirect table", "1033", "226796185/219456"),
    convertCount,
    [alloaOf480(1), tex],
    ["count", tex],
  );
  cited(
    "one Hawick cut in tex",
    published(countConversionTex, "indirect table", "2687", "589670081/219456"),
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
    published(centralOhioWeavers, "yarn count note", "1800", "1800"),
    convertCount,
    [woollenCut(6), yardsPerPound],
    ["count", yardsPerPound],
  );

  cited(
    "one old denier",
    published(davis1920, "p. 38", "533 1/3 to the ounce, weighed on 520 yd", "45359237/405749760"),
    convertCount,
    [oldEnglishDenier(1), tex],
    ["count", tex],
  );
  cited(
    "one dram of silk, by definition",
    published(davis1920, "p. 38", "weight in drams of 1000 yd", "45359237/23408640"),
    convertCount,
    [dramSilk(1), tex],
    ["count", tex],
  );
  cited(
    "one skein, by the yards to the ounce given",
    published(
      davis1920,
      "pp. 37 and 38",
      "1 yd to the ounce",
      "256",
      "misprint: a yard to the ounce is 16 yards to the pound; the 256 of the same page is a yard to the dram",
    ),
    convertCount,
    [yorkshireSkein(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "one spun silk",
    published(davis1920, "p. 37", "840", "840"),
    convertCount,
    [spunSilkCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "French cotton in an American guide",
    published(silkMillGuide1920, "opening page", "992", "45359237/45720"),
    convertCount,
    [frenchCottonCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "metric count in an American guide",
    published(silkMillGuide1920, "opening page", "496", "45359237/91440"),
    convertCount,
    [metricCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "two pounds to the spyndle, on a formula sheet",
    published(
      textileSchoolFormulas,
      "Commonly used numbering systems",
      "number of 14,400 yd lengths in a pound",
      "7200",
      "misprint: upside down; it is the pounds in one length of 14,400 yd, so that two are 7200 yards to the pound",
    ),
    convertCount,
    [juteCount(2), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "a lea of linen on a supplier’s table",
    published(eugeneTextileCenter2017, "20 June 2017", "340", "300", "misprint: the lea of linen is 300 yards"),
    convertCount,
    [linenCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "a grain to the yard in kilotex",
    published(balasubramanianFactors, "Table I", "0.07087", "6479891/91440000", "worked with a grain of 0.0648 g"),
    convertCount,
    [grainsPer20Yards(20), kilotex],
    ["count", kilotex],
  );
  cited(
    "metric 80, the single of 80/2",
    published(tgeThreads, "table", "12.5", "12.5"),
    convertCount,
    [metricCount(80), tex],
    ["count", tex],
  );
  cited(
    "8000 yards to the pound in runs",
    published(dooley1914, "chapter on woolen yarn", "5", "5"),
    convertCount,
    [yardsPerPound(8000), woollenRun],
    ["count", woollenRun],
  );
  cited(
    "5200 yards to the pound in runs",
    published(dooley1914, "chapter on woolen yarn", "3 1/4", "13/4"),
    convertCount,
    [yardsPerPound(5200), woollenRun],
    ["count", woollenRun],
  );
  cited(
    "30 cut",
    published(dooley1914, "chapter on woolen yarn", "9000", "9000"),
    convertCount,
    [woollenCut(30), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "15 cut",
    published(dooley1914, "chapter on woolen yarn", "4500", "4500"),
    convertCount,
    [woollenCut(15), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "24/26 denier in drams",
    published(
      wolfensberger1921,
      "pp. 76, 80 and 92",
      "1.47",
      "75/52",
      "the stock lines of the book take 17 denier to the dram, its page 69 takes 17.3",
    ),
    convertCount,
    [oldEnglishDenier(25), dramSilk],
    ["count", dramSilk],
  );
  cited(
    "20/24 denier in drams",
    published(wolfensberger1921, "pp. 76, 80 and 92", "1.3", "33/26"),
    convertCount,
    [oldEnglishDenier(22), dramSilk],
    ["count", dramSilk],
  );
  cited(
    "24/28 denier in drams",
    published(wolfensberger1921, "pp. 76, 80 and 92", "1.5", "1.5"),
    convertCount,
    [oldEnglishDenier(26), dramSilk],
    ["count", dramSilk],
  );
  cited(
    "one West of England in tex",
    { source: iso1144, at: "table", status: "from memory", prints: "", exact: "226796185/146304" },
    convertCount,
    [westOfEnglandCount(1), tex],
    ["count", tex],
  );
  cited(
    "one Dewsbury in tex",
    { source: iso1144, at: "table", status: "from memory", prints: "", exact: "1133980925/36576" },
    convertCount,
    [yardsPerOunce(1), tex],
    ["count", tex],
  );
  cited(
    "one Hawick cut in tex, by definition",
    { source: iso1144, at: "table", status: "from memory", prints: "", exact: "589670081/219456" },
    convertCount,
    [hawickCut(1), tex],
    ["count", tex],
  );
  cited(
    "metric 94 in decitex",
    { source: wcoHeading5205, at: "heading 52.05", status: "from memory", prints: "", exact: "5000/47" },
    convertCount,
    [metricCount(94), decitex],
    ["count", decitex],
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
    expect(() => convertCount(juteCount(0), tex)).toThrow("a count above zero");
  });
});
