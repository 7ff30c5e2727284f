// Every code that a doc comment promises is given, for the mistake it is promised for. What a formula refuses is told from its
// declaration, as "one error for all faulty fields", and asked for beside each.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as maths from "@thrum/maths";
import * as catalogue from "@thrum/maths/catalogue";
import * as plan from "@thrum/plan";
import { describe, expect, it } from "vitest";
import { examplePlan } from "#ci/example-plans.js";

const { centimetres, cottonCount, dentsPerInch, endsPerInch, grams, inches, metres, millimetres, ounces } = maths;
const { currency, jobSum, lengthLeft, percentAdded, percentLost, reedWidth, tex, yards } = maths;

const like = { ends: 300, sett: endsPerInch(15) };
const wanted = { like, unit: inches, decimals: 2 };
const reed = jobSum("reed", reedWidth, wanted);
const takesLater = jobSum("width", reedWidth, { ...wanted, takes: [["ends", "later"]] });
const inCell = (sett: unknown): object => ({ ends: "A1", sett });
const thin = millimetres("0.2");
const spaced = {
  endSpacing: millimetres("0.4"),
  pickSpacing: millimetres("0.4"),
  warpDiameter: thin,
  weftDiameter: thin,
};
const edge = { planned: [24, 24, 12], lastRight: 1, foundAt: 2, countedRight: [], countedOdd: [] };
const counted = { ends: 8, sharingHeddle: 4, floating: 2, lost: 1, endsInEachDent: [2] };
const skein = { order: "plies first", system: cottonCount, counted: "single" };
const loose = ["xx", "x."];
const cloth = { weave: ["x.", ".x"], count: cottonCount(8), material: "cotton", wrapsPerInch: "not wrapped" };
const unlike = ["0.0101", "0.0103", "0.0107", "0.0109"];
const sizes = { packageMass: unlike.map((mass) => ounces(mass)), price: unlike.map((price) => currency("EUR")(price)) };
const almost = { length: yards("10.0000001"), taken: yards(10) };
const napkins = examplePlan("2-hall-napkins");
const claim = { written: "20.0", unit: inches };

/** The name of a function, a code, and a call that is refused with it. */
const rows: readonly (readonly [name: string, code: string, ...given: readonly unknown[]])[] = [
  ["inputEntries", "wrong-kind", { declaration: {} }],
  ["loadFormula", "unknown-word", "creelList"],
  ["revive", "unreadable", "", { dimension: "length", value: "many", unit: "inches" }],
  ["revive", "unknown-unit", "", { dimension: "length", value: "21", unit: "cubits" }],
  ["check", "unreadable", reedWidth, like, { written: "many", unit: inches }],
  ["check", "unknown-unit", reedWidth, like, { written: "20", unit: "inches" }],
  ["digitsEarned", "unreadable", reedWidth, like, { sett: "many" }],
  ["digitsEarned", "unknown-field", reedWidth, like, { reed: "15" }],
  ["digitsEarned", "out-of-range", reedWidth, like, { sett: "16" }],
  ["firstWrongLine", "unreadable", reedWidth, like, { width: "many" }],
  ["firstWrongLine", "unknown-field", reedWidth, like, { length: "20" }],
  ["jobSum", "missing", "reed", reedWidth],
  ["jobSum", "wrong-kind", "reed", reedWidth, { ...wanted, takes: "ends" }],
  ["classJob", "missing", undefined, 4],
  ["classJob", "wrong-kind", ["reed"], 4],
  ["classJob", "unknown-field", [takesLater, reed], 4],
  ["problem", "no-answer", lengthLeft, { like: almost, unit: yards, decimals: 7, seed: 4 }],
  ["problem", "wrong-kind", reedWidth, { ...wanted, unit: grams, seed: 4 }],
  ["problem", "missing", reedWidth, wanted],
  ["problem", "not-whole", reedWidth, { ...wanted, decimals: 2.5, seed: 4 }],
  ["lengthPerMass", "wrong-kind", grams, 50, grams],
  ["lengthPerMass", "out-of-range", metres, 0, grams],
  ["currency", "unreadable", "E U R"],
  ["forColumns", "wrong-kind", reedWidth, { sett: grams }, inches],
  ["forColumns", "out-of-range", reedWidth, { sett: endsPerInch }, inches, { ends: [300], sett: [0] }],
  ["forColumns", "no-answer", lengthLeft, { length: yards, taken: yards }, yards, { length: [10], taken: [11] }],
  ["inUnit", "wrong-kind", inches(36), grams],
  ["sum", "wrong-kind", inches(36), grams(2)],
  ["difference", "wrong-kind", inches(36), grams(2)],
  ["times", "not-a-number", inches(36), "half"],
  ["ratio", "wrong-kind", inches(36), grams(2)],
  ["ratio", "no-answer", inches(36), inches(0)],
  ["compare", "wrong-kind", inches(36), grams(2)],
  ["equal", "wrong-kind", inches(36), grams(2)],
  ["unitOf", "copied-quantity", { ...inches(21) }],
  ["unitOf", "wrong-kind", 21],
  ["sign", "copied-quantity", { ...inches(21) }],
  ["sign", "wrong-kind", 21],
  ["solveFor", "no-answer", maths.packagesToBuy, "needed", "packages"],
  ["spreadsheetFormula", "unreadable", reedWidth, inCell(["B 1", endsPerInch]), inches],
  ["spreadsheetFormula", "wrong-kind", reedWidth, inCell(["B1", grams]), inches],
  ["spreadsheetFormula", "missing", reedWidth, inCell("B1"), inches],
  ["spreadsheetLines", "unreadable", reedWidth, inCell(["B 1", endsPerInch]), inches, () => "C1"],
  ["spreadsheetLines", "wrong-kind", reedWidth, inCell(["B1", grams]), inches, () => "C1"],
  ["spreadsheetLines", "missing", reedWidth, inCell("B1"), inches, () => "C1"],
  ["asMarkdown", "wrong-kind", "20 in"],
  ["clothByShortRule", "no-answer", { ...spaced, warpCrimp: percentAdded(90), factor: 1.5 }],
  ["peirceCloth", "no-answer", { ...spaced, warpCrimp: percentAdded(90) }],
  ["threadFromCrimp", "no-answer", { spacing: millimetres(1), crimp: percentAdded(90), diameters: millimetres(1) }],
  ["threadFromHeight", "no-answer", { spacing: millimetres(1), height: millimetres(2), diameters: millimetres(1) }],
  ["exactSley", "no-answer", { reed: dentsPerInch(10), sett: endsPerInch("16.1"), mostDents: 4 }],
  ["heddlesPerShaft", "out-of-range", { shafts: 4, parts: [{ threading: [1, 5], times: 2 }] }],
  ["sleyFrom", "unreadable", "two a dent"],
  ["comparedSetts", "unreadable", { ...cloth, weave: ["x?"] }],
  ["comparedSetts", "no-answer", { ...cloth, weave: loose }],
  ["purposeShare", "unknown-word", { purpose: "sails" }],
  ["countsOfWarp", "no-answer", { ...counted, lost: 9 }],
  ["miscountAtEdge", "no-answer", { ...edge, oldSeen: 0, newSeen: 0 }],
  ["longestWarpByColour", "empty", []],
  ["publishedAllowance", "unknown-word", "loom waste"],
  ["warpGroup", "unknown-word", "beer"],
  ["basket", "out-of-range", { together: 1 }],
  ["satin", "no-answer", { ends: 6, move: 2 }],
  ["twill", "wrong-kind", { floats: [2, 1, 1] }],
  ["weaveQuantities", "unreadable", ["x?"]],
  ["weaveQuantities", "no-answer", loose],
  ["agreedRegain", "ambiguous", { convention: "EU 1007/2011", fibre: "wool" }],
  ["agreedRegain", "no-answer", { convention: "ASTM D1909", fibre: "kapok" }],
  ["cheapestPackages", "out-of-range", { needed: ounces(16_000), ...sizes }],
  ["convertCount", "wrong-kind", 20, tex],
  ["convertCount", "out-of-range", cottonCount(0), tex],
  ["diameterConstant", "no-answer", { material: "woollen", givenBy: "Taylor" }],
  ["finer", "wrong-kind", tex(20), inches(2)],
  ["finer", "out-of-range", tex(20), tex(0)],
  ["coarser", "wrong-kind", tex(20), inches(2)],
  ["coarser", "out-of-range", tex(20), tex(0)],
  ["yarnFromText", "ambiguous", "2/20"],
  ["yarnFromText", "unreadable", "No. 60"],
  ["yarnFrom", "unreadable", "No. 60", skein],
  ["yarnFrom", "ambiguous", "40s/2", skein],
  ["settFrom", "ambiguous", "20"],
  ["settFrom", "wrong-kind", "20 ppi"],
  ["reedFrom", "ambiguous", "20"],
  ["reedFrom", "wrong-kind", "20 epi"],
  ["picksFrom", "ambiguous", "20"],
  ["picksFrom", "wrong-kind", "20 epi"],
  ["healdFrom", "ambiguous", "20"],
  ["healdFrom", "wrong-kind", "20 epi"],
  ["countFrom", "ambiguous", "20 silk"],
  ["countSystemFrom", "ambiguous", "silk"],
  ["countSystemFrom", "unknown-unit", "cubits"],
  ["lengthFrom", "unreadable", "many", [inches]],
  ["lengthFrom", "ambiguous", "12", [inches, centimetres]],
  ["lengthFrom", "unknown-unit", "2 cubits", [inches]],
  ["massFrom", "unreadable", "many", [grams]],
  ["massFrom", "ambiguous", "12", [grams, ounces]],
  ["massFrom", "unknown-unit", "2 stone", [grams]],
  ["moneyFrom", "ambiguous", "$12"],
  ["moneyFrom", "unknown-unit", "12"],
  ["decimalTextFrom", "unreadable", "many"],
  ["decimalTextFrom", "ambiguous", "1,234"],
  ["numberFrom", "unreadable", "many"],
  ["numberFrom", "ambiguous", "1,234"],
  ["percentFrom", "ambiguous", "10 %", [percentLost, percentAdded]],
  ["quantityFrom", "unknown-unit", { dimension: "length", value: "21", unit: "inches" }, [centimetres]],
  ["quantityFrom", "unreadable", { dimension: "length", value: "many", unit: "inches" }, [inches]],
  ["checkFigure", "missing", napkins, ["figures", "nowhere"], claim],
  ["planFrom", "wrong-kind", 21],
  ["planFrom", "unreadable", { dimension: "length", value: "21", unit: "cubits" }],
  ["readPlan", "unreadable", "{"],
  ["working", "missing", napkins, ["figures", "nowhere"]],
  ["jobTextWith", "unreadable", "a: [", { pieces: 3 }],
];

const everything: Readonly<Record<string, unknown>> = {
  ...maths,
  ...catalogue,
  ...plan,
  forColumns: (calculation: never, units: never, unit: never, columns = {}) =>
    maths.forColumns(calculation, units, unit)(columns),
};

/** The codes of a call's faults; none where it is not refused. */
async function codesOfCall(name: string, given: readonly unknown[]): Promise<readonly string[]> {
  try {
    await (everything[name] as (...given: readonly unknown[]) => unknown)(...given);
    return [];
  } catch (error) {
    if (!maths.isThrumError(error)) throw error;
    return error.faults.map(({ code }) => code);
  }
}

/** What doc comments promise, as "function: code", of functions that anyone can import. */
function promisedIn(source: string): readonly string[] {
  const documented = /\/\*\*((?:(?!\*\/)[\s\S])*?)\*\/\s*export (?:async )?(?:function|const) (\w+)/gu;
  return [...source.matchAll(documented)].flatMap(([, comment = "", name = ""]) => {
    const throws = /@throws ([\s\S]*?)(?=\n \* @|$)/u.exec(comment)?.[1] ?? "";
    if (!(name in everything) || throws.includes("one error for all faulty fields")) return [];
    return [...throws.matchAll(/"([a-z-]+)"/gu)].map(([, code = ""]) => `${name}: ${code}`);
  });
}

describe("a code that a doc comment promises", () => {
  it.each(rows.map(([name, code, ...given]) => ({ name, code, given })))(
    "$name refuses with $code",
    async ({ name, code, given }) => {
      expect(await codesOfCall(name, given)).toContain(code);
    },
  );

  it("is asked for here, every one, and none that no comment promises", () => {
    const sources = ["maths", "plan"].flatMap((name) => {
      const folder = fileURLToPath(new URL(`../../packages/${name}/src/`, import.meta.url));
      const files = readdirSync(folder, { recursive: true, encoding: "utf8" });
      return files
        .filter((file) => /(?<!\.test|\.test-d)\.ts$/u.test(file))
        .map((file) => readFileSync(folder + file, "utf8"));
    });
    const asked = new Set(rows.map(([name, code]) => `${name}: ${code}`));
    const promises = new Set(sources.flatMap(promisedIn));
    expect([...promises].filter((one) => !asked.has(one))).toEqual([]);
    expect([...asked].filter((one) => !promises.has(one))).toEqual([]);
  });
});
