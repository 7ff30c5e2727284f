// node .ci/cases/case-pack.mjs: the formulas, the units and the cited cases as one JSON file that a program in any language can read to
// test itself. Written into what is published with @thrum/maths; its schema stands beside the package's manifest.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { root } from "../support/built.mjs";
import { calculationsOf, mathsSource } from "../support/source.mjs";

/** Raised when a program that reads the pack would have to be changed. */
const VERSION = 1;

const folder = `${root}packages/maths/`;
const read = (path) => JSON.parse(readFileSync(folder + path, "utf8"));
const maths = await mathsSource();
const { cases, powersOf, sources } = { ...maths, ...read("src/verification/cases.json") };
const calculations = new Map(calculationsOf(maths));

const byText = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

/** The currencies met in a case, which are made by name and not exported. */
function currenciesIn(value) {
  if (typeof value !== "object" || value === null) return [];
  return value.dimension === "money" ? [value.unit] : Object.values(value).flatMap(currenciesIn);
}

const exported = Object.entries(maths).filter(([, value]) => maths.isUnit(value));
const currencies = [...new Set(cases.flatMap(({ args }) => currenciesIn(args)))].sort(byText);
const units = [...exported, ...currencies.map((name) => [name, maths.currency(name)])];

/** ["÷", "1", "count"]: names and numbers are text, and only numbers begin with a digit. */
function packedTree(tree) {
  if (tree.op === "number") return tree.text;
  if (tree.op === "name") return tree.name;
  return "of" in tree ? [tree.op, packedTree(tree.of)] : [tree.op, packedTree(tree.left), packedTree(tree.right)];
}

const packedPart = (part) => part && [part[0], part[1].name];

function packedUnit({ dimension, symbol, scale, of }) {
  const parts = of && { length: packedPart(of.length), mass: packedPart(of.mass) };
  return { kind: dimension, symbol, scale: scale.map(String), parts };
}

function packedInput({ what, dimension, orDimension, noun, meaning, range, words, member, mayBeEmpty, reckonedIn }) {
  const kinds = what === "quantity" || what === "unit" || member?.what === "quantity" ? [dimension] : [];
  const bounds = Object.fromEntries(Object.entries(range).filter(([, bound]) => bound !== null));
  return {
    what,
    kinds: orDimension === undefined ? kinds : [...kinds, orDimension],
    noun,
    meaning,
    range: bounds,
    ...(words === undefined ? {} : { words }),
    ...(member === null ? {} : { of: member.what }),
    ...(mayBeEmpty ? { mayBeEmpty } : {}),
    ...(typeof reckonedIn === "string" ? { reckonedIn } : {}),
    ...(Array.isArray(reckonedIn) ? { reckonedIn: reckonedIn.map(({ name }) => name) } : {}),
  };
}

function packedFormula({ declaration }) {
  const { inputs, lines, formula, atLeast, result, source } = declaration;
  return {
    text: formula
      .split("\n")
      .map((line) => line.trim())
      .filter(Boolean),
    lines: lines.map(({ name, tree }) => [name, packedTree(tree)]),
    inputs: Object.fromEntries(Object.entries(inputs).map(([field, input]) => [field, packedInput(input)])),
    atLeast,
    result: packedInput(result),
    resultCountsIn: inputs[declaration.resultIn]?.what === "unit" ? declaration.resultIn : null,
    source: source.key,
  };
}

const about = ({ title, source, at, status, prints, exact, differs }) => ({
  title,
  source,
  at,
  status,
  prints,
  exact,
  ...(differs === undefined ? {} : { differs }),
});

function packedValue(value) {
  if (Array.isArray(value)) return value.map(packedValue);
  if (typeof value !== "object" || value === null) return value;
  const { value: amount, unit } = value;
  return amount === undefined ? { unit } : { amount, unit };
}

const formulaCases = cases
  .filter(({ call }) => calculations.has(call))
  .map((one) => ({
    ...about(one),
    formula: one.call,
    input: Object.fromEntries(Object.entries(one.args[0]).map(([field, value]) => [field, packedValue(value)])),
    answerIn: one.read,
  }));

const conversions = cases
  .filter(
    ({ call, read: reading }) => call === "inUnit" || (call === "convertCount" && reading?.startsWith("count in ")),
  )
  .map((one) => ({
    ...about(one),
    from: packedValue(one.args[0]),
    to: one.read.replace("count in ", ""),
  }));

const used = new Set([...formulaCases, ...conversions].map(({ source }) => source));
for (const [, { declaration }] of calculations) used.add(declaration.source.key);
const declared = [...calculations.values()].map(({ declaration }) => declaration.source);
const known = Object.fromEntries([...declared, ...Object.values(sources)].map((source) => [source.key, source]));
const pack = {
  $schema: "./case-pack.schema.json",
  version: VERSION,
  package: read("package.json").version,
  kinds: Object.fromEntries(
    [...new Set(units.map(([, { dimension }]) => dimension))].map((kind) => [kind, powersOf(kind)]),
  ),
  units: Object.fromEntries(units.map(([name, unit]) => [name, packedUnit(unit)])),
  sources: Object.fromEntries([...used].sort(byText).map((key) => [key, known[key]])),
  formulas: Object.fromEntries([...calculations].map(([name, one]) => [name, packedFormula(one)])),
  cases: formulaCases,
  conversions,
};
mkdirSync(`${folder}dist`, { recursive: true });
writeFileSync(`${folder}dist/case-pack.json`, `${JSON.stringify(pack, null, 1)}\n`);
writeFileSync(`${folder}dist/case-pack.schema.json`, readFileSync(`${folder}case-pack.schema.json`, "utf8"));
const left = cases.length - formulaCases.length - conversions.length;
process.stdout.write(
  `case pack: ${calculations.size} formulas, ${units.length} units, ${formulaCases.length} cases, ${conversions.length} conversions; ${left} cases of functions that are no formula stay in the package\n`,
);
