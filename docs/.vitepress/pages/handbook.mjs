// What the site is made from, and its one door to the workshop: the calculations, their files, and the cited cases collected from the tests.
import { existsSync, readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";
import { packageNames, root } from "../../../.ci/support/built.mjs";
import { isPublished } from "../../../.ci/cases/rows.mjs";
import { calculationsOf, fileOf, mathsSource } from "../../../.ci/support/source.mjs";

export { isPublished, packageNames, root };

export const maths = await mathsSource();

/** Every calculation: its name, its declaration, its file, and the folder of the handbook it stands in. */
export const calculations = calculationsOf(maths).map(([name, calculation]) => {
  const { kebab, path, text } = fileOf(name);
  return { name, calculation, declaration: calculation.declaration, kebab, path, text, folder: path.split("/").at(-2) };
});

const collected = packageNames
  .map((name) => `${root}packages/${name}/src/verification/cases.json`)
  .filter(existsSync)
  .map((path) => JSON.parse(readFileSync(path, "utf8")));

/** Every cited case, its source beside it. */
export const cases = collected.flatMap(({ cases: own, sources }) =>
  own.map((one) => ({ ...one, source: sources[one.source] })),
);

/** The sentences of the comment above a calculation, up to its first tag. */
export function sentencesOf({ name, text }) {
  const at = text.indexOf(`export const ${name}:`);
  const comment = text.slice(text.lastIndexOf("/**", at) + 3, at);
  const lines = comment.split("\n").map((line) => line.replace(/^\s*\* ?/u, ""));
  const tag = lines.findIndex((line) => line.startsWith("@"));
  return lines
    .slice(0, tag < 0 ? undefined : tag)
    .join("\n")
    .trim();
}

/** The unit a quantity is in, as exported. */
export const unitOf = ({ dimension, unit }) => (dimension === "money" ? maths.currency(unit) : maths[unit]);

export const { isUnit } = maths;

/** The units that may stand where a dimension is wanted, by name. */
export const unitsOf = (...dimensions) =>
  Object.entries(maths).filter(([, value]) => isUnit(value) && dimensions.includes(value.dimension));

/** What the example in the comment of a calculation calls it with. */
function exampleOf({ name, calculation, text }) {
  const at = text.indexOf(`export const ${name}:`);
  const comment = text.slice(text.lastIndexOf("/**", at), at);
  const example = comment.slice(comment.indexOf("@example") + "@example".length, comment.lastIndexOf("*/"));
  const code = example.replace(/^\s*\* ?/gmu, "").replace(/\/\/.*$/gmu, "");
  let input = null;
  const called = (given) => {
    input = given;
    return calculation(given);
  };
  runInNewContext(code, { ...maths, [name]: called }, { timeout: 5000 });
  if (input === null) throw new Error(`the example of ${name} does not call it`);
  return input;
}

export const casesOf = (name) => cases.filter(({ call }) => call === name);

/**
 * The case a page works through: one read in its source with a printed answer if there is one, with few inputs left at
 * zero. Where nobody has published one it is our own example, and `source` is null.
 */
export function shownCase(one) {
  const zeros = ({ args }) => JSON.stringify(args).split('"value":"0"').length;
  const rank = (row) => (isPublished(row) ? 0 : 100) + (row.differs === undefined ? 0 : 10) + 6 * zeros(row);
  const [best] = casesOf(one.name).sort((a, b) => rank(a) - rank(b));
  if (best === undefined) return { title: "our own example, in no book", source: null, at: "", input: exampleOf(one) };
  return { ...best, input: maths.argumentsOf(best)[0] };
}
