import type { Unit } from "../../engine/quantity/index.js";
import * as direct from "../direct-counts.js";
import * as indirect from "../indirect-counts.js";

/** A system that numbers yarn, direct or indirect. */
export type CountSystem = Unit<"mass per length"> | Unit<"length per mass">;

/** Beside its name and symbol, what a system is called where that cannot mean another. */
export const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  tex: ["g/km"],
  decitex: ["deci tex"],
  kilotex: ["kilo tex", "g/m"],
  denier: ["den", "g/9 km", "legal denier"],
  dramSilk: ["dram", "drams", "manchester dram"],
  oldEnglishDenier: ["old denier"],
  juteCount: ["jute", "aberdeen", "lb/spyndle", "lb per spyndle", "spyndle of jute", "dry flax"],
  cottonCount: ["cotton", "english cotton", "ne", "nec"],
  spunSilkCount: ["spun silk"],
  worstedCount: ["worsted", "nek"],
  linenCount: ["linen", "linen lea", "wet flax", "nel"],
  metricCount: ["metric", "nm"],
  yardsPerPound: ["ypp", "yd per lb", "yds/lb"],
  metresPerKilogram: ["m per kg", "meters per kilogram"],
  woollenRun: ["run", "runs", "woolen run"],
  woollenCut: ["woolen cut", "american cut"],
  yorkshireSkein: ["yorkshire skeins", "yorkshire"],
  galashielsCut: ["galashiels"],
  hawickCut: ["hawick"],
  leicesterCount: ["leicester", "lambswool of leicester"],
  westOfEnglandCount: ["west of england"],
  yardsPerOunce: ["dewsbury", "organzine", "yd per oz"],
  frenchCottonCount: ["french cotton"],
};

const { denier, oldEnglishDenier, internationalDenier, turinDenier, milanDenier, dramSilk } = direct;
const { cottonCount, worstedCount, linenCount, spunSilkCount, metricCount, yardsPerOunce } = indirect;
const { woollenRun, woollenCut, yorkshireSkein, galashielsCut, hawickCut, alloaOf240, alloaOf480 } = indirect;
const { americanAsbestosCut, britishAsbestosCount, frenchCottonCount, leicesterCount } = indirect;

/** Names that mean two things, with the systems they may mean; some mean a bare length as well. */
export const AMBIGUOUS: Readonly<Record<string, readonly CountSystem[]>> = {
  denier: [denier, oldEnglishDenier, internationalDenier, turinDenier, milanDenier],
  lea: [linenCount, cottonCount],
  hank: [cottonCount, worstedCount, spunSilkCount],
  spindle: [direct.juteCount, cottonCount],
  spyndle: [direct.juteCount, cottonCount],
  skein: [yorkshireSkein, cottonCount, internationalDenier],
  grain: [direct.grainsPer20Yards, direct.grainsPer120Yards],
  cut: [woollenCut, galashielsCut, hawickCut, linenCount, americanAsbestosCut],
  scotch: [galashielsCut, hawickCut, alloaOf240, alloaOf480],
  alloa: [alloaOf240, alloaOf480],
  asbestos: [americanAsbestosCut, britishAsbestosCount],
  french: [frenchCottonCount, metricCount],
  silk: [spunSilkCount, dramSilk, denier, yardsPerOunce],
  wool: [worstedCount, woollenRun, woollenCut, yorkshireSkein, galashielsCut, leicesterCount, metricCount],
  woollen: [woollenRun, woollenCut, yorkshireSkein, galashielsCut, leicesterCount],
  flax: [linenCount, direct.juteCount],
};

/** Every system there is. */
export const SYSTEMS: readonly CountSystem[] = [...Object.values(direct), ...Object.values(indirect)];
