// node .ci/build/doc-tags.mjs: writes into each calculation's file what its declaration says, the field sentences and the tags between
// the first sentence and the example. With --check it only tells which files differ.
import { writeFileSync } from "node:fs";
import { format } from "prettier";
import { root } from "../support/built.mjs";
import { calculationsOf, fileOf, mathsSource } from "../support/source.mjs";

const maths = await mathsSource();
const check = process.argv.includes("--check");
const sentence = (text) => `${text[0].toUpperCase()}${text.slice(1)}.`;

function formulaTag({ formula }) {
  const lines = formula
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);
  return lines.length === 1 ? [`@formula ${lines[0]}`] : ["@formula", "```text", ...lines, "```"];
}

const nounOf = ({ what, noun, member, reckonedIn }) => {
  if (reckonedIn === undefined) return what === "list" ? `a list, each ${member.noun}` : noun;
  const units =
    typeof reckonedIn === "string" ? [`the ${reckonedIn}`] : reckonedIn.map(({ name }) => maths.inWords(name));
  return `${noun}, reckoned in ${units.join(" or ")}`;
};

function unitsTag({ inputs, result }) {
  const nouns = [...new Set(Object.values(inputs).map(nounOf))];
  return `@units ${nouns.join("; ")} → ${nounOf(result)}`;
}

function exactnessTag({ inputs, formula, result }) {
  if ([result, ...Object.values(inputs)].some(({ reckonedIn }) => reckonedIn !== undefined))
    return "@exactness rule of thumb, its constants for the units it reckons in";
  if (Object.values(inputs).some(({ what, isCount }) => what === "number" && !isCount))
    return "@exactness rule of thumb, from plain numbers";
  return /[÷√]/u.test(formula) ? "@exactness to 34 digits" : "@exactness exact";
}

function throwsTag({ inputs }) {
  const kinds = Object.values(inputs);
  const codes = ["missing", "unknown-field", "wrong-kind", "out-of-range"];
  if (kinds.some(({ what }) => what === "whole")) codes.push("not-whole");
  if (kinds.some(({ what, mayBeEmpty }) => what === "list" && !mayBeEmpty)) codes.push("empty");
  return `@throws QuantityError ${codes.map((code) => `"${code}"`).join(", ")}, one error for all faulty fields`;
}

const sourceTag = ({ source }) => `@source ${source.key}`;

/** The declaration's part of the comment, wrapped to the width of the page. */
function tagsOf(declaration) {
  const tags = [
    ...formulaTag(declaration),
    unitsTag(declaration),
    exactnessTag(declaration),
    throwsTag(declaration),
    sourceTag(declaration),
  ];
  return tags.map((line) => ` * ${line}`).join("\n");
}

function withTags(text, name, declaration) {
  const at = text.indexOf(`export const ${name}:`);
  const open = text.lastIndexOf("/**", at);
  const comment = text.slice(open, at);
  const example = comment.indexOf(" * @example");
  if (at < 0 || open < 0 || example < 0) throw new Error(`${name} needs a doc comment with an @example`);
  const byHand = comment.slice(
    0,
    Math.min(...[" * @formula", " * @example"].map((tag) => comment.indexOf(tag)).filter((i) => i >= 0)),
  );
  return `${text.slice(0, open)}${byHand}${tagsOf(declaration)}\n${comment.slice(example)}${text.slice(at)}`;
}

function withFields(text, { inputs }) {
  return Object.entries(inputs).reduce((file, [field, { meaning }]) => {
    const declared = new RegExp(`(?:  /\\*\\* [^\\n]* \\*/\\n)?  readonly ${field}: `, "u");
    return file.replace(declared, `  /** ${sentence(meaning)} */\n  readonly ${field}: `);
  }, text);
}

const stale = [];
for (const [name, { declaration }] of calculationsOf(maths)) {
  const { path, text } = fileOf(name);
  const tagged = withFields(withTags(text, name, declaration), declaration);
  if (tagged === text) continue;
  const written = await format(tagged, { parser: "typescript", printWidth: 120 });
  if (written === text) continue;
  if (check) stale.push(path);
  else writeFileSync(root + path, written);
}
if (stale.length > 0) {
  process.stderr.write(`comments differ from their declarations: ${stale.join(", ")}; run pnpm generate\n`);
  process.exit(1);
}
