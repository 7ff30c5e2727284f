// The same sum as code and as the formula of a cell, from the numbers in the fields.
import { spreadsheetFormula } from "../../../../packages/maths/src/engine/spreadsheet/index.ts";

const LETTERS = "ABCDEFGHIJKLMNOP";
const numberText = ({ value }) => (String(Number(value)) === value ? value : JSON.stringify(value));

function codeOf(value, used) {
  if (Array.isArray(value)) return `[${value.map((one) => codeOf(one, used)).join(", ")}]`;
  if (typeof value === "function") return unitCode(value.name, value.dimension, used);
  if (typeof value === "object") return `${unitCode(value.unit, value.dimension, used)}(${numberText(value)})`;
  return JSON.stringify(value);
}

function unitCode(name, dimension, used) {
  used.add(dimension === "money" ? "currency" : name);
  return dimension === "money" ? `currency(${JSON.stringify(name)})` : name;
}

/** The sum as code; `solved` tells which input comes out, and `from` the name under which the answer then goes in. */
function codeFor(form, input, { answer, unit, solved, from }) {
  const used = new Set(solved === null ? [form.name] : [form.name, "solveFor"]);
  const lines = Object.entries(input).map(([field, value]) => `  ${field}: ${codeOf(value, used)},`);
  const shown = typeof answer === "number" ? answer : answer.in(unit);
  const unitText = unit === null ? "" : unitCode(unit.name, answer.dimension, used);
  const read = unit === null ? "answer" : `answer.in(${unitText})`;
  const how = solved?.isWhole ? `{ rounding: "${solved.rounding}" }` : `{ in: ${unitText} }`;
  const call = solved === null ? form.name : `solveFor(${form.name}, "${solved.field}", "${from}", ${how})`;
  const imports = [...used].sort((a, b) => a.localeCompare(b)).join(", ");
  const short = JSON.stringify(shown);
  const cut = short.length > 10 && short.includes(".") && !short.includes("e") ? `${short.slice(0, 9)}…` : short;
  return [
    `import { ${imports} } from "@thrum/maths";`,
    "",
    `const answer = ${call}({`,
    ...lines,
    "});",
    `${read}; // ${cut}`,
  ].join("\n");
}

/** Cells in row 2, one an input, and the formula over them. */
function cellsFor(form, calculation, input, unit, units) {
  const placed = form.fields.map((field, at) => {
    const given = input[field.field];
    if (field.what === "unit") return { field, address: "", cell: given };
    const isList = field.what === "list" && given.length > 0;
    const address = isList ? `${LETTERS[at]}2:${LETTERS[at]}${String(given.length + 1)}` : `${LETTERS[at]}2`;
    const first = isList ? given[0] : given;
    const own = typeof first === "object" && !Array.isArray(first) ? units[first.unit] : null;
    return { field, address, unit: own, cell: own === null ? address : [address, own] };
  });
  const cells = Object.fromEntries(placed.map(({ field, cell }) => [field.field, cell]));
  const rows = placed
    .filter(({ address }) => address !== "")
    .map(({ field, address, unit: own }) => [address, field.label, own?.symbol ?? ""]);
  return { rows, formula: spreadsheetFormula(calculation, cells, unit) };
}

/** Both, of what the fields came to. */
export function usesOf(form, { input, answer }, { tools, unit, solved, from }) {
  const { calculation, units } = tools;
  const inUnit = typeof answer === "number" ? null : units[unit];
  const code = codeFor(form, input, { answer, unit: inUnit, solved, from });
  return { ...cellsFor(form, calculation, input, inUnit, units), code };
}
