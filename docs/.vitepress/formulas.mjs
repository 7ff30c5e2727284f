// Modules of the site made from the declarations: one for each formula, loaded when its page is opened.
import { calculations, maths, root, shownCase, unitOf, unitsOf } from "./pages/handbook.mjs";

const PREFIX = "virtual:formula/";
const TURNED = "virtual:turned/";
const WORDS = "virtual:formulas-in-words";
const catalogue = await import(`${root}packages/maths/dist/catalogue.js`);
const from = (path) => JSON.stringify(`${root}${path}`);
const { inWords, rearrangement } = maths;

/** The units to choose from: all of their kind, or of a currency the one the case is in, for none changes into another. */
function choicesFor(example, ...dimensions) {
  if (example?.dimension === "money") return [[example.unit, unitOf(example).symbol]];
  return unitsOf(...dimensions).map(([name, { symbol }]) => [name, symbol]);
}

/** The usual units, in the order a picker has them; the old ones of the trade come after. */
const usualOf = (names, ...dimensions) => {
  const usual = dimensions
    .flatMap((dimension) => (dimension === undefined ? [] : catalogue.unitsOf(dimension)))
    .filter(({ name, use }) => use === "usual" && names.includes(name))
    .map(({ name }) => name);
  return usual.length < names.length ? usual : [];
};

/** What stands in a field when the page opens: the number of the case worked through. */
function startOf(field, { what, member, ...input }, given) {
  const dimension = member?.dimension ?? input.dimension;
  const list = what === "list";
  const first = list ? given[0] : given;
  const units = choicesFor(first, dimension, input.orDimension);
  const text = (one) => (typeof one === "object" ? one.value : String(one));
  return {
    field,
    label: inWords(field),
    meaning: input.meaning,
    what,
    of: list ? member.what : what,
    dimension: dimension ?? null,
    mayBeEmpty: input.mayBeEmpty ?? false,
    usual: usualOf(
      units.map(([name]) => name),
      dimension,
      input.orDimension,
    ),
    words: input.words ?? null,
    units: units.map(([name]) => name),
    symbols: units.map(([, symbol]) => symbol),
    unit: typeof first === "object" ? first.unit : what === "unit" ? given.name : (units[0]?.[0] ?? null),
    value: what === "unit" ? "" : list ? given.map(text).join("; ") : text(first),
  };
}

const inUnitOfFirst = (given) =>
  Array.isArray(given) && typeof given[0] === "object"
    ? given.map((one) => maths.inUnit(one, unitOf(given[0])))
    : given;

/** The form of a formula's page, as data. */
function formOf(one) {
  const { input } = shownCase(one);
  const answer = one.calculation(input);
  const fields = Object.entries(one.declaration.inputs).map(([field, declared]) =>
    startOf(field, declared, inUnitOfFirst(input[field])),
  );
  const { sign, value } = maths.explain(one.calculation, input).result;
  // Turned round, it is the reader who says what the answer is to be.
  const { result, lines } = one.declaration;
  const counted =
    typeof answer === "number" ? result : { ...result, dimension: answer.dimension, orDimension: undefined };
  const answerField = { ...startOf(lines.at(-1).name, counted, answer), value: "" };
  const { unit, usual, units, symbols } = answerField;
  return {
    name: one.name,
    title: inWords(one.name),
    fields,
    first: `${sign} ${value}`,
    shownIn: null,
    answer: { unit, usual, units, symbols },
    answerField,
    turns: fields
      .filter(({ field }) => rearrangement(one.declaration, field).ok)
      .map(({ field, label, what }) => ({ field, label, isWhole: what === "whole" })),
  };
}

const byName = new Map(calculations.map((one) => [one.name, one]));

/** The reader of what people type, by what is counted. */
const READERS = {
  length: "lengthFrom",
  mass: "massFrom",
  "ends per length": "settFrom",
  "picks per length": "picksFrom",
  "dents per length": "reedFrom",
  "length per mass": "countFrom",
  "mass per length": "countFrom",
  money: "moneyFrom",
};

function moduleOf(name) {
  const one = byName.get(name);
  const form = formOf(one);
  const units = [...new Set([...form.fields.flatMap(({ units: own }) => own), ...form.answer.units])];
  const exported = units.filter((unit) => unit in maths);
  const currencies = units.filter((unit) => !(unit in maths)).map((unit) => `${unit}: currency("${unit}")`);
  const kinds = [...new Set(form.fields.map(({ dimension }) => dimension))].filter((kind) => kind in READERS);
  const readers = [...new Set(kinds.map((kind) => READERS[kind]))];
  return [
    `export { ${name} as calculation } from ${from(one.path)};`,
    `import { ${["currency", ...readers, ...exported].join(", ")} } from ${from("packages/maths/src/units/index.ts")};`,
    `export { explain } from ${from("packages/maths/src/engine/working/index.ts")};`,
    `export const loadSolve = () => import("${TURNED}${(form.answerField.dimension ?? "").replaceAll(" ", "-")}");`,
    `export const loadCheck = () => import(${from("packages/maths/src/check/index.ts")});`,
    `export const units = { ${[...exported, ...currencies].join(", ")} };`,
    `export const readers = { ${kinds.map((kind) => `${JSON.stringify(kind)}: ${READERS[kind]}`).join(", ")} };`,
    `export { decimalTextFrom } from ${from("packages/maths/src/units/index.ts")};`,
    `export { inUnit, quantityText } from ${from("packages/maths/src/engine/quantity/index.ts")};`,
  ].join("\n");
}

/** What turns a formula round, with the reader of its answer: loaded when one is. */
function turnedModule(dimension) {
  const reader = READERS[dimension];
  return [
    `export { solveFor } from ${from("packages/maths/src/engine/solve/index.ts")};`,
    ...(reader === undefined ? [] : [`import { ${reader} } from ${from("packages/maths/src/units/index.ts")};`]),
    `export const readers = ${reader === undefined ? "{}" : `{ ${JSON.stringify(dimension)}: ${reader} }`};`,
  ].join("\n");
}

/** What one may look for a formula by, beside its own words: its inputs, the kind of its answer and the units of both. */
function wordsOf(one) {
  const { fields, answer } = formOf(one);
  const kind = one.declaration.result.dimension ?? "";
  return [kind, ...answer.symbols, ...answer.units, ...fields.flatMap(({ label, symbols }) => [label, ...symbols])];
}

function wordsModule() {
  const about = calculations.map((one) => [`${one.kebab}.html`, [...new Set(wordsOf(one))].join(" ")]);
  return `export const about = ${JSON.stringify(Object.fromEntries(about))};`;
}

/** The module of a formula, for the page that works it. */
export const formulaModule = (name) => PREFIX + name;

/** Vite's part: `virtual:formula/<name>`, what turns one round, and the words to find one by. */
export function formulaModules() {
  return {
    name: "formula-modules",
    resolveId: (id) => (id === WORDS || id.startsWith(PREFIX) || id.startsWith(TURNED) ? `\0${id}` : null),
    load(id) {
      if (id === `\0${WORDS}`) return wordsModule();
      if (id.startsWith(`\0${TURNED}`)) return turnedModule(id.slice(TURNED.length + 1).replaceAll("-", " "));
      return id.startsWith(`\0${PREFIX}`) ? moduleOf(id.slice(PREFIX.length + 1)) : null;
    },
  };
}

/**
 * The form of a formula, opened with the numbers given, written as the address of its page has them: `21~inches`; and with
 * the unit for the reader's own answer.
 */
export function formNamed(name, given = {}) {
  const form = formOf(byName.get(name));
  const fields = form.fields.map((field) => {
    const [value = field.value, unit = field.unit] = String(given[field.field] ?? "")
      .split("~")
      .filter(Boolean);
    return { ...field, value, unit };
  });
  if (given.answer === undefined) return { ...form, fields };
  const input = Object.fromEntries(
    fields.map(({ field, value, unit }) => [field, unit === null ? Number(value) : maths[unit](value)]),
  );
  const first = maths.quantityText(maths.inUnit(byName.get(name).calculation(input), maths[given.answer]));
  return {
    ...form,
    fields,
    first: `≈ ${first}`,
    shownIn: given.answer,
    answer: { ...form.answer, unit: given.answer },
  };
}
