// The engine knows no weaving, and what checks and teaches only what stands in two files of numbers: no unit is named, no word
// of the trade is used and no kind of its quantities asked for but where a message gives an example.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { allUnits } from "#ci/inputs.js";

const maths = fileURLToPath(new URL("../../packages/maths/src/", import.meta.url));

/** Words of the trade, by their beginnings. */
const TRADE =
  /^(?:warps?|wefts?|looms?|reeds?|setts?|sle[yi]\w*|heddles?|healds?|dents?|picks|threads?|yarns?|cloths?|weav\w*|woven|wove|knots?|hanks?|leas?|skeins?|hems?|fringes?|crimps?|shrink\w*|selvedges?|twists?|plies)$/u;
/** The seeds of every size; what is made of these alone is no kind of weaving. */
const SEEDS = ["length", "mass", "area", "volume"];

const dimensions = new Set(allUnits.map(({ dimension }) => dimension).concat("money"));
const ofTheTrade = [...dimensions].filter((one) => !one.split(" per ").every((part) => SEEDS.includes(part)));
const symbols = new Set(allUnits.map(({ symbol }) => symbol));
const wordsOf = (text: string): readonly string[] =>
  text
    .replace(/([a-z\d])([A-Z])/gu, "$1 $2")
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word !== "");
/** Words in the names of units that mean no unit by themselves. */
const PLAIN = [
  ...[...SEEDS, "added", "count", "cubic", "cut", "end", "half", "hundred", "international", "long", "lost", "old"],
  ...["per", "percent", "pick", "run", "square", "stick", "system", "ten"],
];
/** What units are called, each word as many and as one. */
const named = new Set(
  allUnits
    .flatMap(({ name }) => wordsOf(name))
    .flatMap((word) => [word, word.replace(/(?<=ch)es$|s$/u, "")])
    .filter((word) => word.length > 2 && !PLAIN.some((plain) => word === plain || word === `${plain}s`)),
);

/** What a text of a source file has of the trade: a unit or kind by itself, or any word in it. */
function tradeIn(text: string, isWhole: boolean): readonly string[] {
  const isOne = isWhole && (symbols.has(text) || ofTheTrade.includes(text));
  return [
    ...(isOne || /take.?up/iu.test(text) ? [text] : []),
    ...wordsOf(text).filter((word) => TRADE.test(word) || named.has(word)),
  ];
}

/** Every text and name of a source file, its comments left out, that has something of the trade. */
function foundIn(code: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const isText = ts.isStringLiteralLike(node) || ts.isRegularExpressionLiteral(node);
    const isPart = ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) {
      const clause = ts.isImportDeclaration(node) ? node.importClause : node.exportClause;
      if (clause !== undefined) visit(clause);
      return;
    }
    // A name of a type's part is no text of the program.
    const isOfType = ts.isLiteralTypeNode(node) && ts.isIndexedAccessTypeNode(node.parent);
    if (isOfType) return;
    const isKey = ts.isIdentifier(node) && ts.isPropertyAssignment(node.parent) && node.parent.name === node;
    const isWhole = isText || (isKey && node.text !== "share");
    if ((isText || isPart || ts.isIdentifier(node)) && tradeIn(node.text, isWhole).length > 0) found.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("a.ts", code, ts.ScriptTarget.Latest, true));
  return found;
}

const files = ["engine", "check", "teach"].flatMap((room) =>
  readdirSync(maths + room, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !/\.test(?:-d)?\.ts$/u.test(file))
    .map((file) => `${room}/${file}`),
);
/** What the check knows of the trade: numbers, of which the sizes are written from the units. */
const NUMBERS = ["check/mixed-up.ts", "check/unit-sizes.ts"];

/** What may stand, each with its file: examples that messages give, and what is no unit for all it looks like one. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  "check/claim.ts": ["Units are values you import, such as yards; write unit: null for a plain number."],
  // A ratio told in hundredths has no unit.
  "check/line-units.ts": ["%"],
  "engine/formula/calculation.ts": ["Hand over the calculation itself, for example warpLength, without calling it."],
  // What a percentage is taken of is arithmetic: the inputs of the three kinds are declared here.
  "engine/formula/percent-input.ts": ["loss", "addition", "share"],
  "engine/quantity/genuine.ts": ["Units are values you import, such as yards."],
  // The method of a quantity, and the option of solveFor.
  "engine/quantity/quantity.ts": [
    "in",
    "Such an amount is no weaver's: look at the numbers and units it comes from.",
    "Make one with a unit, for example inches(21).",
  ],
  "engine/solve/solve-for.ts": ["in"],
  "engine/spreadsheet/cells.ts": [
    "Give a cell such as B2, a range such as B1:B3, or a defined name such as loom_waste, with its unit.",
  ],
};

describe("what reckons, checks and teaches", () => {
  it("names nothing of the trade but in the examples its messages give", () => {
    const found = files
      .filter((file) => !NUMBERS.includes(file))
      .map((file) => [file, [...new Set(foundIn(readFileSync(maths + file, "utf8")))]] as const)
      .filter(([, texts]) => texts.length > 0);
    expect(files.length).toBeGreaterThan(100);
    expect(Object.fromEntries(found)).toEqual(ALLOWED);
  });

  it.each([
    ['const inInches = unit.symbol === "in";', ["inInches", "in"]],
    ['if (unit.dimension === "money") refuse();', ["money"]],
    ["const threads = /^(?:ends|picks) per length$/u.test(dimension);", ["threads", "/^(?:ends|picks) per length$/u"]],
    ['const says = `takes ${name} by the ${ratio > 1 ? "centimetre" : "inch"}`;', ["centimetre", "inch"]],
    ['spaced.replace(/take up/u, "take-up") + `of the warp`', ["/take up/u", "take-up", "of the warp"]],
    ['const bases = { loss: "lost", share: "of a whole" };', ["loss"]],
    ["// The ends of a warp, in inches", []],
  ])("is found out where it does: %s", (code, found) => {
    expect(foundIn(code)).toEqual(found);
  });
});
