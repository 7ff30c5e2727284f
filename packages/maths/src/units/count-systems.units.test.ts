import { spawnSync } from "node:child_process";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { genuineUnit } from "../engine/quantity/index.js";
import { systems } from "./reading/count-names.js";

/** Each system by the name GNU units has for it, or by its definition where it has none. */
const expressions: Readonly<Record<string, string>> = {
  tex: "tex",
  kilotex: "1000 tex",
  decitex: "decitex",
  denier: "denier",
  dramSilk: "manchesteryarnnumber",
  oldEnglishDenier: "(3|1600) oz / 520 yd",
  internationalDenier: "0.05 g / 500 m",
  turinDenier: "0.053 g / 476 m",
  milanDenier: "0.051 g / 476 m",
  juteCount: "lb / 14400 yd",
  grainsPer20Yards: "grain / 20 yd",
  grainsPer120Yards: "grain / 120 yd",
  cottonCount: "cottonyarncount",
  spunSilkCount: "7 skeincotton / lb",
  worstedCount: "worstedyarncount",
  linenCount: "linenyarncount",
  metricCount: "metricyarncount",
  yardsPerPound: "yd / lb",
  metresPerKilogram: "m / kg",
  typp: "typp",
  woollenRun: "woolyarnrun",
  woollenCut: "yarncut",
  yorkshireSkein: "yd / dram",
  galashielsCut: "300 yd / 24 oz",
  alloaOf240: "240 yd / lb",
  alloaOf480: "480 yd / lb",
  hawickCut: "300 yd / 26 oz",
  leicesterCount: "176 yd / lb",
  westOfEnglandCount: "320 yd / lb",
  yardsPerOunce: "yd / oz",
  americanAsbestosCut: "asbestoscut",
  britishAsbestosCount: "50 yd / lb",
  frenchCottonCount: "1000 m / 500 g",
};

describeWith("GNU units", (path) => {
  it.each(systems().map((system) => [system.name, system] as const))("has %s as we have it", (name, system) => {
    const base = system.dimension === "mass per length" ? "g / m" : "m / g";
    const run = spawnSync(path, ["--terse", "--output-format", "%.15g", expressions[name] ?? name, base]);
    const theirs = Number(run.stdout.toString());
    const [over, under] = genuineUnit(system(1))?.scale ?? [Number.NaN, 1];
    const chains = `GNU units: 1 ${expressions[name] ?? name} = ${String(theirs)} ${base}; ours: 1 ${name} = ${String(over)} ÷ ${String(under)}`;
    expect(Math.abs(theirs - over / under), chains).toBeLessThanOrEqual((1e-13 * over) / under);
  });
});
