import { readFileSync } from "node:fs";
import { currency, percentAdded, percentLost, percentOf } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import type { Job } from "../job/job.js";
import { readJob } from "../job/read-job.js";
import { planDifferences, planDifferencesText } from "../text/plan-differences.js";
import { planText } from "../text/plan-text.js";
import { planWarp } from "./plan-warp.js";

function jobOf(file: string, change: (text: string) => string = (text) => text): Job {
  const reading = readJob(change(readFileSync(`examples/hall-napkins/${file}`, "utf8")));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return reading.job;
}

function faultsOf(change: (text: string) => string): readonly string[] {
  const reading = readJob(change(readFileSync("examples/hall-napkins/woven.yaml", "utf8")));
  return reading.ok
    ? []
    : reading.faults.map(({ path, expected, received }) => `${path}: ${expected}, not ${received}`);
}

const woven = planWarp(jobOf("woven.yaml"));

describe("the napkins once the first was woven", () => {
  it("are reckoned with the picks found: 175 in × 16 × 18.4 in of weft", () => {
    // 51,520 in = 1431.11 yd, and 252 × 5.56159 = 1401.52 yd of warp: 2832.63 yd ÷ 3360 = 0.843046 lb.
    expect(woven.yarns[0]?.weft.value).toMatch(/^1431\.11/u);
    expect(woven.firstInches?.drawIn?.in(percentLost)).toBeCloseTo((100 * 0.9) / 18.4, 9);
  });

  it("lost what the four measures say, each of the measure before it", () => {
    const lost = woven.found?.losses.map(({ what, loss }) => [what, loss?.in(percentLost).toFixed(3)]);
    expect(lost).toEqual([
      ["warp taken up in weaving", "7.143"], // 1.5 ÷ 21
      ["length, off the loom", "2.564"], // 0.5 ÷ 19.5
      ["length, washed and pressed", "8.553"], // 1.625 ÷ 19
      ["length in all", "10.897"], // 2.125 ÷ 19.5
      ["width, reed to fell", "4.891"], // 0.9 ÷ 18.4
      ["width, off the loom", "2.857"], // 0.5 ÷ 17.5
      ["width, washed and pressed", "8.088"], // 1.375 ÷ 17
      ["width in all", "15.082"], // 2.775 ÷ 18.4
    ]);
  });

  it("that grew off the loom are said to have grown, not lost less than nothing", () => {
    const grown = planWarp(jobOf("woven.yaml", (text) => text.replace("offLoom: 19 in", "offLoom: 20 in")));
    expect(grown.found?.losses[1]?.loss).toBeNull();
    expect(planText(grown)).toContain("none: it grew");
  });

  it("cost what yarn, work and the rest come to, shared over nine", () => {
    // 0.843046 lb × 16 ÷ 8 oz × 14.50; 2.1187 oz ÷ 8 × 15.20; 26.154 g ÷ 50 × 9; 22 × 16; 9.90; and for repairs
    // 2 × 5.56159 yd ÷ 3360 × 16 = 0.05297 oz, 0.0960 EUR; 1 × 5.0855 m ÷ 7 = 0.7265 g, 0.1308 EUR.
    const costs = woven.costs;
    expect(costs?.yarns.map(({ cost }) => cost.in(currency("EUR")).toFixed(2))).toEqual(["24.54", "4.03", "4.84"]);
    expect(costs?.piece.in(currency("EUR"))).toBeCloseTo(395.3083 / 9, 3);
    expect(costs?.floor.in(currency("EUR"))).toBeCloseTo(395.3083 / 9 / 0.7, 3);
    expect(planText(woven)).toContain("One of 9 costs 43.93 EUR. Below 62.75 EUR");
  });

  it("leave pieces in what is left: (60 − 10) × 0.92 ÷ 19.4444 is two and a half", () => {
    expect(woven.pieceTape.piecesLeft).toBe(2);
  });
});

describe("a cloth of two fibres", () => {
  it("has the share of each without the waste, by dry mass and with the agreed regain", () => {
    const job = jobOf("job.yaml");
    const fibres = {
      cotton: { regain: percentAdded("8.5"), yarns: ["natural", "madder"] },
      wool: { regain: percentAdded(17), yarns: ["indigo"] },
    };
    const [cotton, wool] = planWarp({ ...job, fibres }).fibres ?? [];
    // In the pieces 190.2174 in of each end: (332 × 190.2174 + 57,960) ÷ 36 ÷ 3360 lb; 36 × 190.2174 in ÷ 7 m to the gram.
    const [c, w] = [((332 * 190.2173913 + 57960) / 36 / 3360) * 453.59237, (36 * 190.2173913 * 0.0254) / 7];
    expect(cotton?.byDryMass.in(percentOf)).toBeCloseTo((100 * c) / 1.085 / (c / 1.085 + w / 1.17), 6);
    expect(wool?.byConditionedMass.in(percentOf)).toBeCloseTo((100 * w) / (c + w), 6);
  });
});

describe("a cloth of one fibre", () => {
  it("is all of that by either mass", () => {
    const fibres = { cotton: { regain: percentAdded("8.5"), yarns: ["natural", "madder", "indigo"] } };
    const [only] = planWarp({ ...jobOf("job.yaml"), fibres }).fibres ?? [];
    expect([only?.byDryMass.in(percentOf), only?.byConditionedMass.in(percentOf)]).toEqual([100, 100]);
  });
});

describe("a part that was not written down", () => {
  it("is asked for in words, and nothing is put in its place", () => {
    const plan = planWarp(jobOf("job.yaml"));
    expect([plan.firstInches, plan.found, plan.costs, plan.fibres, plan.pieceTape.piecesLeft]).toEqual(
      Array(5).fill(null),
    );
    for (const part of ["Add costs to the job", "Add fibres to the job", "under found"])
      expect(planText(plan).replaceAll("\n", " ")).toContain(part);
  });

  it("is not asked for twice: once the first inches are counted, only the four measures have blanks", () => {
    const counted = jobOf("woven.yaml", (text) => text.replace(/\nfound:[\s\S]*?\ncosts/u, "\ncosts"));
    const text = planText(planWarp(counted));
    expect(text).not.toContain("count again");
    expect(text).toContain("width at the fell          ______");
  });

  it("is refused where it is half written, or names what is not there", () => {
    expect(faultsOf((text) => text.replace(", indigo: 9 EUR", ""))).toEqual([
      "costs.packagePrices: a price for indigo, not none",
    ]);
    expect(faultsOf((text) => text.replace("indigo: 9 EUR", "indigo: 9 USD, green: 8 EUR"))).toEqual([
      'costs.packagePrices.green: one of the yarns, not "green"',
      "costs.packagePrices.indigo: EUR, as the hourly rate is, not 9 USD",
    ]);
    expect(faultsOf((text) => text.replace("[natural, madder]", "[natural, natural, red]"))).toEqual([
      'fibres.cotton.yarns[2]: one of the yarns, not "red"',
      'fibres.cotton.yarns[1]: each yarn once, not "natural"',
      "fibres: the fibre of madder, not none",
    ]);
    expect(faultsOf((text) => text.replace("hourlyRate: 16 EUR", "hourlyRate: 16"))).toEqual([
      'costs.hourlyRate: an amount of money, such as "14.50 EUR", not 16',
    ]);
    expect(faultsOf((text) => text.replace("8.5 % added", "8.5 %"))).toEqual([
      'fibres.cotton.regain: a percentage added, such as "8.5 % added", not "8.5 %"',
    ]);
    expect(faultsOf((text) => text.replace("  commission: 30 % lost\n", ""))[0]).toContain("costs.commission");
  });
});

describe("two plans side by side", () => {
  it("show only what differs", () => {
    const job = jobOf("job.yaml");
    const [before, after] = [planWarp(job), planWarp({ ...job, pieces: { ...job.pieces, number: 10 } })];
    expect(planDifferences(before, before)).toEqual([]);
    expect(planDifferencesText(before, before)).toBe("The two plans have the same figures.");
    // One piece more is 17.5 ÷ 0.9 ÷ 0.92 = 21.1353 in of warp.
    expect(planDifferences(before, after).map(({ what }) => what)).toEqual([
      "pieces",
      "warp",
      ...["natural", "madder", "indigo"].flatMap((name) => [`${name}: yarn`, `${name}: weight`]),
    ]);
    expect(planDifferences(before, woven).at(-1)).toEqual({
      what: "linen: by dry mass",
      before: null,
      // 24.848 g ÷ 1.12 of linen beside 430.01 g ÷ 1.085 of cotton.
      after: "5.3 %",
    });
    for (const line of planDifferencesText(before, woven).split("\n")) expect(line.length).toBeLessThanOrEqual(80);
    expect(() => planDifferences(before, {} as never)).toThrow("planDifferences(after)");
  });
});

describe("a warp that loses nothing", () => {
  it("is not called too short where adding and dividing come to the same", () => {
    const none = jobOf("job.yaml", (text) =>
      text.replace("takeUp: 8 % lost", "takeUp: 0 % lost").replace("loomToFinished: 10 %", "loomToFinished: 0 %"),
    );
    expect(planText(planWarp(none))).not.toContain("too short");
    expect(planText(planWarp(jobOf("job.yaml")))).toContain("too short");
  });
});
