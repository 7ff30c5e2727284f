// Modules of the site made from the declarations: one for each formula, loaded when its page is opened.
import { calculations, maths, unitsOf } from "../../.ci/docs/handbook.mjs";
import { casesOf, shownCase } from "../../.ci/docs/formula-page.mjs";

const PREFIX = "virtual:formula/";
const { argumentsOf, inWords } = maths;

/** What stands in the fields when the page opens: the numbers of the case worked through. */
function startOf(field, { what, member, ...input }, given) {
  const dimension = member?.dimension ?? input.dimension;
  const units = unitsOf(dimension, input.orDimension).map(([name, { symbol }]) => [name, symbol]);
  const list = what === "list";
  const first = list ? given[0] : given;
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
    ? given.map((one) => maths.inUnit(one, maths[given[0].unit]))
    : given;

/** The form of a formula's page, as data. */
function formOf(one) {
  const [input] = argumentsOf(shownCase(casesOf(one.name)));
  const answer = one.calculation(input);
  const fields = Object.entries(one.declaration.inputs).map(([field, declared]) =>
    startOf(field, declared, inUnitOfFirst(input[field])),
  );
  const units = typeof answer === "number" ? [] : unitsOf(answer.dimension).map(([name, { symbol }]) => [name, symbol]);
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
  const from = (path) => JSON.stringify(`${root}${path}`);
  return [
    `export { ${name} as calculation } from ${from(one.path)};`,
    `import { ${["lengthFrom", "massFrom", ...units].join(", ")} } from ${from("packages/maths/src/units/index.ts")};`,
    `export { asText, explain } from ${from("packages/maths/src/engine/working/index.ts")};`,
    `export { check } from ${from("packages/maths/src/engine/check/index.ts")};`,
    `export { inUnit } from ${from("packages/maths/src/engine/quantity/index.ts")};`,
    `export const units = { ${units.join(", ")} };`,
    `export const readers = { length: lengthFrom, mass: massFrom };`,
  ].join("\n");
}

/** Vite's part: `virtual:formulas` loads `virtual:formula/<name>`. */
export function formulaModules(root) {
  return {
    name: "formula-modules",
    resolveId: (id) => (id === "virtual:formulas" || id.startsWith(PREFIX) ? `\0${id}` : null),
    load(id) {
      if (id === "\0virtual:formulas") {
        const loaders = [...byName.keys()].map((name) => `${name}: () => import("${PREFIX}${name}")`);
        return `export const formulas = { ${loaders.join(",\n")} };`;
      }
      return id.startsWith(`\0${PREFIX}`) ? moduleOf(id.slice(PREFIX.length + 1), root) : null;
    },
  };
}

export const formNamed = (name) => formOf(byName.get(name));
