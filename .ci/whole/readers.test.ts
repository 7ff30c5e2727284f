// Everything that takes text from people, in all packages: capped, in linear time, and blind to what objects inherit.
import * as maths from "@thrum/maths";
import { defineCalculation, defineUnit } from "@thrum/maths/define";
import { planFrom, readFigures, readJob, readProgress, readStripes } from "@thrum/plan";
import { sequenceFromList, settFromThreadCount } from "@thrum/stripes";
import { afterAll, describe, expect, it } from "vitest";
import { answer } from "../../packages/sheets/src/functions/index.js";
import { exampleText } from "../support/example-jobs.js";
import { leastTime, leastTimeOfCalls } from "../support/processor-time.js";

const { cottonCount, inches, yards, yarnMass } = maths;
const legend = { a: "ash", k: "coal" };
const job = exampleText("2-hall-napkins");
const wound = { length: yards(840), count: cottonCount(1) };

/** Each reader by name; a refusal is a thrown error of ours or a reading that is not ok. */
const readers: Readonly<Record<string, (text: string) => unknown>> = {
  "a unit": (text) => yards(text),
  lengthFrom: (text) => maths.lengthFrom(text, [inches]),
  massFrom: (text) => maths.massFrom(text, [maths.ounces]),
  "a length of a named locale": (text) => maths.lengthFrom(text, [inches], { locale: "de" }),
  "the name of a locale": (text) => maths.lengthFrom("1 in", [inches], { locale: text }),
  quantityFrom: (text) => maths.quantityFrom({ dimension: "length", value: text, unit: "inches" }, [inches]),
  countSystemFrom: (text) => maths.countSystemFrom(text),
  currency: (text) => maths.currency(text),
  yarnFrom: (text) => maths.yarnFrom(text, { order: "plies first", system: cottonCount, counted: "single" }),
  sleyFrom: (text) => maths.sleyFrom(text),
  "the step of a fraction": (text) => maths.asText(inches(1), { step: text }),
  "an answer to check": (text) => maths.check(yarnMass, wound, { written: text, unit: maths.pounds }),
  "how far an answer may be off": (text) =>
    maths.check(yarnMass, wound, { written: "1", unit: maths.pounds, within: text }),
  "a line to check": (text) => maths.firstWrongLine(yarnMass, wound, { mass: text }),
  "the name of a line": (text) => maths.firstWrongLine(yarnMass, wound, { [text]: "1" }),
  "a cell": (text) =>
    maths.spreadsheetFormula(yarnMass, { length: [text, yards], count: ["B2", cottonCount] }, maths.pounds),
  sequenceFromList: (text) => sequenceFromList({ text, legend }),
  settFromThreadCount: (text) => settFromThreadCount({ text, legend: { K: 1, A: 2 }, pivots: "full count" }),
  settFrom: (text) => maths.settFrom(text),
  reedFrom: (text) => maths.reedFrom(text),
  picksFrom: (text) => maths.picksFrom(text, { locale: "en" }),
  healdFrom: (text) => maths.healdFrom(text),
  countFrom: (text) => maths.countFrom(text),
  moneyFrom: (text) => maths.attempt(maths.moneyFrom, text),
  numberFrom: (text) => maths.numberFrom(text),
  decimalTextFrom: (text) => maths.decimalTextFrom(text),
  percentFrom: (text) => maths.attempt(maths.percentFrom, text, [maths.percentLost, maths.percentAdded]),
  yarnFromText: (text) => maths.yarnFromText(text),
  "a quantity of any kind": (text) => maths.quantityFrom(text, [maths.endsPerInch]),
  "the formula of one's own": (text) => maths.attempt(defineCalculation, { name: "own", formula: text }),
  "the name of a unit of one's own": (text) => maths.attempt(defineUnit, { name: text, symbol: text }),
  readStripes: (text) => readStripes(text),
  readProgress: (text) => readProgress(text),
  readFigures: (text) => readFigures(text),
  "a plan as data": (text) => maths.attempt(planFrom, text),
  readJob: (text) => readJob(text),
};

/** The words of the refusal; nothing where the text was read. */
function refusalOf(read: (text: string) => unknown, text: string): string | null {
  try {
    const found = read(text) as { readonly ok?: boolean; readonly faults?: unknown };
    return found.ok === false ? JSON.stringify(found.faults) : null;
  } catch (error) {
    if (error instanceof Error && ["QuantityError", "StripeError"].includes(error.name)) return error.message;
    throw error;
  }
}

const inherited = Reflect.ownKeys(Object.prototype).map(String);
afterAll(() => {
  expect(Reflect.ownKeys(Object.prototype).map(String)).toEqual(inherited);
});

/** Any letters may name a currency, a cell or a yarn. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  currency: ["constructor", "toString", "hasOwnProperty", "valueOf"],
  "a cell": ["constructor"],
  readStripes: ["1 __proto__"],
};

describe.each(Object.entries(readers))("%s", (name, read) => {
  it.each(["9", " ", "1 ft ", "½", "[", "20 a, ", "K4 ", "-", "1-", "1/", ",", "\n", "{a: ", "- ", "#"])(
    "refuses a megabyte of %j in few words and at once",
    (piece) => {
      const text = piece.repeat(Math.ceil(1_000_000 / piece.length));
      let said: string | null = null;
      expect(leastTime(() => (said = refusalOf(read, text)), 3)).toBeLessThan(100);
      expect(said).toMatch(/\w/u);
      expect(String(said).length).toBeLessThan(2500);
    },
  );

  it.each(["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf", "1 __proto__", "K__proto__4"])(
    "takes %j for no word it knows",
    (word) => {
      expect(refusalOf(read, word) ?? "read as a name").toMatch(
        NAMES[name]?.includes(word) === true ? /^read as a name$/u : /^(?!read as a name$).*\w/su,
      );
    },
  );
});

describe("the time a long text takes", () => {
  it.each<readonly [string, (size: number) => unknown]>([
    ["a list", (size) => refusalOf(readers["sequenceFromList"] ?? String, "1 a, 1 k, ".repeat(size / 10))],
    ["brackets that never close", (size) => refusalOf(readers["sequenceFromList"] ?? String, "[".repeat(size))],
    ["a thread count", (size) => refusalOf(readers["settFromThreadCount"] ?? String, "K2 A2 ".repeat(size / 6))],
  ])("grows no faster than the text: %s of 1,000 and of 10,000 characters", (_name, read) => {
    const [short, long] = [leastTimeOfCalls(() => read(900), 200), leastTimeOfCalls(() => read(9000), 20)];
    expect(long).toBeLessThan(12 * short + 1);
  });

  it.each<readonly [string, (stripes: number) => string]>([
    ["stripes", (many) => job.replace("stripes:\n", `stripes:\n${"  - 1 madder\n".repeat(many)}`)],
    ["unknown keys", (many) => `${job}${Array.from({ length: many }, (_, at) => `key${String(at)}: 1\n`).join("")}`],
    ["a long note", (many) => job.replace("note:", `note: ${"striped napkins for the hall ".repeat(many)}#`)],
  ])("grows no faster than the text: a job with ten times the %s", (_name, textOf) => {
    const [few, many] = [textOf(250), textOf(2500)];
    const [short, long] = [leastTimeOfCalls(() => readJob(few), 20), leastTimeOfCalls(() => readJob(many), 2)];
    expect(long).toBeLessThan(12 * short + 5);
  });
});

describe("a cell of a spreadsheet", () => {
  it("with a megabyte, or the name of what every object has, is answered in words", () => {
    const words = ["__proto__", "constructor", "toString", "x".repeat(1_000_000)];
    for (const word of words) {
      for (const cells of [
        [word, 20, "ends/in", "inches"],
        [368, 20, word, "inches"],
        [368, 20, "ends/in", word],
      ]) {
        expect(() => answer("REED_WIDTH", cells)).toThrow(/expected|Write/u);
      }
    }
  });
});

it("a job cannot reach what every object has", () => {
  const found = readJob(`${job}__proto__: { ends: 1 }\nconstructor: 1\n`);
  expect(found.ok).toBe(false);
  expect(({} as Record<string, unknown>)["ends"]).toBeUndefined();
});
