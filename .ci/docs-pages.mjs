// pnpm docs:pages: a page for every formula, the verification table and the errata, all from the declarations and the
// collected cases. With --check it only tells which pages differ.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { packageNames, root } from "./built.mjs";
import { isPublished } from "./rows.mjs";
import { calculationsOf, fileOf, mathsSource } from "./source.mjs";

const check = process.argv.includes("--check");
const maths = await mathsSource();
const { argumentsOf, asMarkdown, explain, inWords, spreadsheetFormula } = maths;
const collected = packageNames
  .map((name) => `${root}packages/${name}/src/verification/cases.json`)
  .filter(existsSync)
  .map((path) => JSON.parse(readFileSync(path, "utf8")));
const all = collected.flatMap(({ cases, sources }) => cases.map((one) => ({ ...one, source: sources[one.source] })));

const capital = (text) => `${text[0].toUpperCase()}${text.slice(1)}`;
const plain = (text) => text.replace(/[\\`*_[\]{}<>|#&~]/gu, (mark) => `&#${mark.codePointAt(0)};`);
const table = (heads, rows) =>
  [heads, heads.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
const book = ({ author, title, year, place }, at) => plain([author, title, year, place, at].filter(Boolean).join(", "));

function boundsOf({ range, dimension, what, member }) {
  if (what === "list") return `one or more, each ${boundsOf(member)}`;
  const percent = ["loss", "addition", "share"].includes(dimension);
  const shown = (bound) => (percent ? `${bound * 100} %` : String(bound));
  const bounds = [
    range.atLeast === null ? "" : `${shown(range.atLeast)} or more`,
    range.above === null ? "" : `more than ${shown(range.above)}`,
    range.below === null ? "" : `less than ${shown(range.below)}`,
    range.atMost === undefined ? "" : `no more than ${shown(range.atMost)}`,
  ];
  return bounds.filter(Boolean).join(", ") || "any";
}

/** The sentences of the comment above a calculation, up to its first tag. */
function sentencesOf(name) {
  const { text } = fileOf(name);
  const at = text.indexOf(`export const ${name}:`);
  const comment = text.slice(text.lastIndexOf("/**", at) + 3, at);
  const lines = comment.split("\n").map((line) => line.replace(/^\s*\* ?/u, ""));
  const tag = lines.findIndex((line) => line.startsWith("@"));
  return lines
    .slice(0, tag < 0 ? undefined : tag)
    .join("\n")
    .trim();
}

const LETTERS = "ABCDEFGHIJKLMNOP";

/** The spreadsheet formula with its inputs in row 2, in the units of the case shown. */
function cellOf(calculation, input) {
  const { inputs, result } = calculation.declaration;
  const unitOf = ({ dimension, unit }) => (dimension === "money" ? maths.currency(unit) : maths[unit]);
  const cells = Object.entries(inputs).map(([field, { what, member }], index) => {
    const column = LETTERS[index];
    if (what === "unit") return [field, input[field]];
    if (what === "list") {
      const range = `${column}2:${column}${String(input[field].length + 1)}`;
      return [field, member.what === "quantity" ? [range, unitOf(input[field][0])] : range];
    }
    return [field, what === "quantity" ? [`${column}2`, unitOf(input[field])] : `${column}2`];
  });
  const answer = calculation(input);
  return spreadsheetFormula(calculation, Object.fromEntries(cells), result.what === "quantity" ? unitOf(answer) : null);
}

function pageOf(name, calculation) {
  const { declaration } = calculation;
  const own = all.filter(({ call }) => call === name);
  const formula = declaration.formula
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);
  const inputs = Object.entries(declaration.inputs).map(([field, input]) => [
    plain(inWords(field)),
    plain(input.noun),
    plain(input.meaning),
    boundsOf(input),
  ]);
  const [shown] = own;
  const worked =
    shown === undefined
      ? []
      : [
          `## Worked through\n\n${capital(plain(shown.title))} (${book(shown.source, shown.at)}).`,
          asMarkdown(explain(calculation, argumentsOf(shown)[0])),
          `## In a spreadsheet\n\nThe inputs stand in row 2, in the order and units of the working above.`,
          `\`\`\`text\n${cellOf(calculation, argumentsOf(shown)[0])}\n\`\`\``,
        ];
  const slips = declaration.slips.map(({ says }) => `- A sum that ${plain(says)}.`);
  return [
    `# ${capital(inWords(name))}`,
    sentencesOf(name),
    `\`\`\`text\n${formula.join("\n")}\n\`\`\``,
    table(["input", "kind", "meaning", "range"], inputs),
    `The answer: ${plain([declaration.result.noun, declaration.result.meaning].filter(Boolean).join(", "))}. Source: ${book(declaration.source)}.`,
    ...worked,
    ...(own.length === 0 ? [] : [`## Published cases\n\n${casesTable(own)}`]),
    ...(slips.length === 0 ? [] : [`## Slips\n\n${slips.join("\n")}`]),
    `Source file: \`${fileOf(name).path}\``,
  ].join("\n\n");
}

function casesTable(rows) {
  return table(
    ["case", "printed", "exact", "source", "why they differ"],
    rows.map(({ title, prints, exact, source, at, status, differs }) => [
      plain(title),
      plain(prints),
      plain(exact),
      book(source, at) + (status === "read" ? "" : ` (${status})`),
      plain(differs ?? ""),
    ]),
  );
}

const pages = new Map();
const calculations = calculationsOf(maths);
for (const [name, calculation] of calculations)
  pages.set(`docs/formulas/${fileOf(name).kebab}.md`, pageOf(name, calculation));
pages.set(
  "docs/formulas/index.md",
  [
    "# Formulas",
    calculations.map(([name]) => `- [${capital(inWords(name))}](./${fileOf(name).kebab}.md)`).join("\n"),
  ].join("\n\n"),
);
const published = all.filter(isPublished);
pages.set(
  "docs/verification.md",
  [
    "# Verification table",
    `Every case below is run as a test against the exact answer, to twelve digits. ${published.length} were read in the source named; those with another mark are not counted as published.`,
    ...[...new Set(all.map(({ call }) => call))].map(
      (call) => `## ${capital(inWords(call))}\n\n${casesTable(all.filter((one) => one.call === call))}`,
    ),
  ].join("\n\n"),
);
pages.set(
  "docs/errata.md",
  [
    "# Where a source is wrong",
    "The library keeps the exact value; here is what each source prints and why it differs.",
    casesTable(all.filter(({ differs }) => differs?.startsWith("misprint"))),
  ].join("\n\n"),
);

mkdirSync(`${root}docs/formulas`, { recursive: true });
const stale = [];
for (const [path, text] of pages) {
  const written = await format(`${text}\n`, { parser: "markdown", printWidth: 120 });
  if (existsSync(root + path) && readFileSync(root + path, "utf8") === written) continue;
  if (check) stale.push(path);
  else writeFileSync(root + path, written);
}
for (const file of readdirSync(`${root}docs/formulas`)) {
  const path = `docs/formulas/${file}`;
  if (pages.has(path)) continue;
  if (check) stale.push(path);
  else rmSync(root + path);
}
if (stale.length > 0) {
  process.stderr.write(`pages differ from the declarations: ${stale.join(", ")}; run pnpm docs:pages\n`);
  process.exit(1);
}
