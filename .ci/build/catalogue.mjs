// node .ci/build/catalogue.mjs: every calculation and report function of the handbook as data, for @thrum/maths/catalogue: its title, the
// first sentence of its comment, its folder, and the words one may look for it by; the list of the units; and the sizes of those
// that a reader mixes up, for the check. `--check` only compares.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { root } from "../support/built.mjs";
import { mathsSource } from "../support/source.mjs";

const handbook = `${root}packages/maths/src/handbook/`;
const target = `${root}packages/maths/src/catalogue/formulas.json`;
const maths = await mathsSource();

/** What a kind is called by those who look for it. */
const WORDS = {
  "ends per length": ["sett", "epi", "ends per inch"],
  "dents per length": ["reed", "dpi", "dents per inch"],
  "picks per length": ["picks", "ppi", "weft sett"],
  "heddles per length": ["heddles", "healds"],
  "length per mass": ["count", "grist", "yarn number", "yards per pound"],
  "mass per length": ["count", "tex", "denier"],
  "mass per area": ["weight of cloth", "gsm"],
  "diameters per length": ["wraps per inch"],
  "mass per volume": ["density"],
  mass: ["weight"],
  loss: ["shrinkage", "take-up"],
  addition: ["crimp", "regain"],
  money: ["cost", "price"],
};

const files = readdirSync(handbook, { recursive: true })
  .filter((file) => file.endsWith(".ts") && !file.includes(".test"))
  .map((file) => ({ file, group: file.split("/")[0], text: readFileSync(handbook + file, "utf8") }));

/** The file that declares a name, its folder, and the first sentence of the comment above it; null for what is no formula. */
function declaredAt(name) {
  for (const { file, group, text } of files) {
    const [found] = new RegExp(`^export (?:const|function) ${name}\\b`, "mu").exec(text) ?? [];
    if (found === undefined) continue;
    const at = text.indexOf(found);
    const comment = text.slice(text.lastIndexOf("/**", at) + 3, at).replace(/^\s*\*\/? ?/gmu, "");
    const sentences = comment.split(/^@/mu)[0].trim().split("\n\n")[0].replace(/\s+/gu, " ");
    return { file, group, says: /^.*?[.](?= [A-Z]|$)/u.exec(sentences)?.[0] ?? sentences };
  }
  return null;
}

const spaced = (name) => name.replace(/([A-Z]|\d+)/gu, " $1").toLowerCase();

function wordsOf(declaration) {
  if (declaration === undefined) return [];
  const kinds = [declaration.result, ...Object.values(declaration.inputs)].map(({ dimension }) => dimension);
  return [...new Set(kinds.flatMap((kind) => WORDS[kind] ?? []))];
}

const places = [];
const entries = Object.entries(maths)
  .filter(([name, value]) => typeof value === "function" && !maths.isUnit(value) && !name.endsWith("Reading"))
  .flatMap(([name, value]) => {
    const declared = declaredAt(name);
    if (declared === null) return [];
    const title = spaced(name).replace(/^./u, (letter) => letter.toUpperCase());
    const what = maths.isCalculation(value) ? "calculation" : "report";
    const { file, group, says } = declared;
    places.push([name, what, file]);
    return [{ name, what, group, says, title, alsoCalled: wordsOf(value.declaration) }];
  })
  .sort((a, b) => (a.name < b.name ? -1 : 1));

const units = Object.keys(maths)
  .filter((name) => maths.isUnit(maths[name]))
  .sort((a, b) => (a < b ? -1 : 1));
// By their names, as a bundle keeps every unit for which a namespace is asked.
const list = `// Written by .ci/build/catalogue.mjs.
import type { Unit } from "../engine/quantity/index.js";
import { ${units.join(", ")} } from "../units/index.js";

/** Every unit there is. */
export function allUnits(): readonly Unit<string>[] {
  return [${units.join(", ")}];
}
`;

// Each formula by a file of its own, which a bundler makes a chunk of, and the build a file beside the main module.
const loaders = `// Written by .ci/build/catalogue.mjs.
type Loader = () => Promise<Readonly<Record<string, unknown>>>;

/** Every calculation by its name, each in a file of its own. */
export const LOADERS: Readonly<Record<string, Loader>> = {
${places
  .filter(([, what]) => what === "calculation")
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([name, , file]) => `${name}: () => import("../handbook/${file.replace(/ts$/u, "js")}"),`)
  .join("\n")}
};
`;

// What the check knows of the units a reader mixes up: numbers in place of units, which would bring what makes them.
const { kinds, toldTo, inEighths } = maths.mixedUp;
const sized = ({ name, symbol, scale }) => JSON.stringify([name, symbol, ...scale]);
const sizes = (all) => `[${all.map(sized).join(", ")}]`;
const takenFor = kinds.map((all) => `${JSON.stringify(all[0].dimension)}: ${sizes(all)}`);
const mixed = `// Written by .ci/build/catalogue.mjs, from units/mixed-up.ts.
/** A unit by its names and its exact size. */
export type Sized = readonly [name: string, symbol: string, numerator: number, denominator: number];

/** The units that a reader takes for one another, by their kind. */
export const TAKEN_FOR: Readonly<Record<string, readonly Sized[]>> = { ${takenFor.join(", ")} };

/** The lengths that a number of things is told to, with the one each is taken for. */
export const TOLD_TO: readonly (readonly [of: Sized, by: Sized])[] = [${sizes(toldTo)}, ${sizes([...toldTo].reverse())}];

/** The symbols of the lengths of which a hand reads no finer part than an eighth. */
export const IN_EIGHTHS: readonly string[] = ${JSON.stringify(inEighths.map(({ symbol }) => symbol))};
`;

const written = [
  [target, await format(JSON.stringify(entries), { parser: "json", printWidth: 120 })],
  [`${root}packages/maths/src/catalogue/all-units.ts`, await format(list, { parser: "typescript", printWidth: 120 })],
  [`${root}packages/maths/src/check/unit-sizes.ts`, await format(mixed, { parser: "typescript", printWidth: 120 })],
  [`${root}packages/maths/src/catalogue/loaders.ts`, await format(loaders, { parser: "typescript", printWidth: 120 })],
];
for (const [path, text] of written) {
  if (!process.argv.includes("--check")) writeFileSync(path, text);
  else if (readFileSync(path, "utf8") !== text) {
    console.error(`${path.slice(root.length)} is not what the handbook says: run pnpm generate`);
    process.exitCode = 1;
  }
}
