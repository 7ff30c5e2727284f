// Modules of the site made from the declarations: one for each formula, loaded when its page is opened.
import { calculations, maths, shownCase, unitOf, unitsOf } from "../../.ci/docs/handbook.mjs";

const PREFIX = "virtual:formula/";
const WORDS = "virtual:formulas-in-words";
const { inWords } = maths;

/** The units to choose from: all of their kind, or of a currency the one the case is in, for none changes into another. */
function choicesFor(example, ...dimensions) {
  if (example?.dimension === "money") return [[example.unit, unitOf(example).symbol]];
  return unitsOf(...dimensions).map(([name, { symbol }]) => [name, symbol]);
}

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
    noun: input.noun,
    what,
    of: list ? member.what : what,
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
  const units = typeof answer === "number" ? [] : choicesFor(answer, answer.dimension);
  return {
    name: one.name,
    title: inWords(one.name),
    fields,
    answer: {
      unit: typeof answer === "number" ? null : answer.unit,
      units: units.map(([name]) => name),
      symbols: units.map(([, symbol]) => symbol),
    },
  };
}

const byName = new Map(calculations.map((one) => [one.name, one]));

function moduleOf(name, root) {
  const one = byName.get(name);
  const form = formOf(one);
  const units = [...new Set([...form.fields.flatMap(({ units: own }) => own), ...form.answer.units])];
  const exported = units.filter((unit) => unit in maths);
  const currencies = units.filter((unit) => !(unit in maths)).map((unit) => `${unit}: currency("${unit}")`);
  const from = (path) => JSON.stringify(`${root}${path}`);
  return [
    `export { ${name} as calculation } from ${from(one.path)};`,
    `import { ${["currency", "lengthFrom", "massFrom", ...exported].join(", ")} } from ${from("packages/maths/src/units/index.ts")};`,
    `export { explain } from ${from("packages/maths/src/engine/working/index.ts")};`,
    `export { check } from ${from("packages/maths/src/engine/check/index.ts")};`,
    `export const units = { ${[...exported, ...currencies].join(", ")} };`,
    `export const readers = { length: lengthFrom, mass: massFrom };`,
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

/** Vite's part: `virtual:formulas` loads `virtual:formula/<name>`. */
export function formulaModules(root) {
  return {
    name: "formula-modules",
    resolveId: (id) => (id === "virtual:formulas" || id === WORDS || id.startsWith(PREFIX) ? `\0${id}` : null),
    load(id) {
      if (id === "\0virtual:formulas") {
        const loaders = [...byName.keys()].map((name) => `${name}: () => import("${PREFIX}${name}")`);
        return `export const formulas = { ${loaders.join(",\n")} };`;
      }
      if (id === `\0${WORDS}`) return wordsModule();
      return id.startsWith(`\0${PREFIX}`) ? moduleOf(id.slice(PREFIX.length + 1), root) : null;
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
  return { ...form, fields, answer: { ...form.answer, unit: given.answer ?? form.answer.unit } };
}
