// The formulas in the order of the work at the loom, each in one step of it, and those that are read together.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { calculations, maths } from "./handbook.mjs";
import { capital } from "./markdown.mjs";

const file = fileURLToPath(new URL("order-of-work.json", import.meta.url));
const { first, steps: written, related } = JSON.parse(readFileSync(file, "utf8"));
const byName = new Map(calculations.map((one) => [one.name, one]));

function known(name) {
  const found = byName.get(name);
  if (found === undefined) throw new Error(`order-of-work.json names ${name}, which is no formula`);
  return found;
}

const placed = new Set(written.flatMap(({ names }) => names.map((name) => known(name).name)));

/** Each step with its formulas: those named for it first, then the rest of its rooms. */
export const steps = written.map(({ title, names, folders = [] }) => ({
  title,
  formulas: [
    ...names.map(known),
    ...calculations.filter(({ name, folder }) => folders.includes(folder) && !placed.has(name)),
  ],
}));

export const tenFirst = first.map(known);

const missing = calculations.filter((one) => !steps.some(({ formulas }) => formulas.includes(one)));
if (missing.length > 0) throw new Error(`in no step of the work: ${missing.map(({ name }) => name).join(", ")}`);

const stepOf = (one) => steps.find(({ formulas }) => formulas.includes(one));

/** The step of a formula, as the list beside its page. */
export function partOf(one) {
  const { title, formulas } = stepOf(one);
  return {
    title,
    index: "formulas/index.html",
    pages: formulas.map(({ name, kebab }) => [`formulas/${kebab}.html`, capital(maths.inWords(name))]),
  };
}

/** Those a weaver turns to beside this one: chosen by hand, else its neighbours in the step. */
export function relatedTo(one) {
  if (related[one.name] !== undefined) return related[one.name].map(known);
  const { formulas } = stepOf(one);
  const first = Math.max(0, formulas.indexOf(one) - 2);
  return formulas.slice(first, first + 4).filter((other) => other !== one);
}
