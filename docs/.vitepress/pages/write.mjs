// A page for every formula, the errata and the sources, all from the declarations and the collected cases.
// With --check it only tells which pages differ, of all or of those named. What nobody reads in a diff is made with the site.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { bibliography } from "../../../.ci/support/bibliography.mjs";
import { errorPages } from "./error-pages.mjs";
import { formulaPage } from "./formula-page.mjs";
import { calculations, cases, maths, root, sentencesOf } from "./handbook.mjs";
import { jobFilePage } from "./job-file-page.mjs";
import { book, capital, list } from "./markdown.mjs";
import { steps, tenFirst } from "./order-of-work.mjs";
import { casesOfBook, errata, trustPage } from "./trust-pages.mjs";

const check = process.argv.includes("--check");
const { inWords } = maths;

/** Folders that hold nothing but generated pages. */
const GENERATED = ["docs/formulas", "docs/errors"];

function formulasIndex() {
  const item = (one) => {
    const [sentence] = sentencesOf(one).split(/(?<=\.)\s/u);
    return `[${capital(inWords(one.name))}](./${one.kebab}.md): ${sentence.replace(/\n/gu, " ")}`;
  };
  return [
    "# Formulas",
    `${calculations.length} formulas in the order of the work at the loom, each on a page of its own with fields for your numbers, the working line by line, what books print, and the same sum for a spreadsheet and in code. Most can be [turned round](../turned-round.md).`,
    '<RowFilter label="Find a formula" hint="by what it gives, what goes in, or a unit: length, picks, tex" formulas />',
    `## The ten needed most\n\n${list(tenFirst.map(item))}`,
    ...steps.map(({ title, formulas }) => `## ${title}\n\n${list(formulas.map(item))}`),
  ].join("\n\n");
}

function sourcesPage() {
  const sources = new Map();
  for (const { source, call } of cases) {
    const calls = sources.get(source.key)?.calls ?? new Set();
    sources.set(source.key, { source, calls: calls.add(call) });
  }
  for (const { name, declaration } of calculations) {
    const { source } = declaration;
    const calls = sources.get(source.key)?.calls ?? new Set();
    sources.set(source.key, { source, calls: calls.add(name) });
  }
  const addresses = new Map(bibliography.map(({ id, URL: address }) => [id, address]));
  const kebabOf = new Map(calculations.map(({ name, kebab }) => [name, kebab]));
  const linked = (name) =>
    kebabOf.has(name) ? `[${inWords(name)}](./formulas/${kebabOf.get(name)}.md)` : inWords(name);
  const entries = [...sources.values()]
    .sort((a, b) => book(a.source).localeCompare(book(b.source), "en"))
    .map(({ source, calls }) => {
      const own = cases.some((one) => one.source.key === source.key) ? ` [Its cases](${casesOfBook(source)})` : "";
      const address = addresses.get(source.key);
      const link = address === undefined ? "" : ` [Where it stands](<${address}>)`;
      return `${book(source)}.${link} Used for ${[...calls].map(linked).join(", ")}.${own}`;
    });
  return ["# Sources", "Every book, paper and page the numbers were checked against.", list(entries)].join("\n\n");
}

const pages = new Map(calculations.map((one) => [`docs/formulas/${one.kebab}.md`, formulaPage(one)]));
pages.set("docs/formulas/index.md", formulasIndex());
pages.set("docs/trust.md", trustPage());
pages.set("docs/errata.md", errata());
pages.set("docs/sources.md", sourcesPage());
pages.set("docs/job-file.md", jobFilePage());
for (const [path, text] of errorPages()) pages.set(path, text);

for (const folder of GENERATED) mkdirSync(root + folder, { recursive: true });
const stale = [];
const named = process.argv.slice(2).filter((one) => pages.has(one));
for (const [path, text] of pages) {
  if (named.length > 0 && !named.includes(path)) continue;
  const written = await format(`${text}\n`, { parser: "markdown", printWidth: 120 });
  if (existsSync(root + path) && readFileSync(root + path, "utf8") === written) continue;
  if (check) stale.push(path);
  else writeFileSync(root + path, written);
}
for (const path of GENERATED.flatMap((folder) => readdirSync(root + folder).map((file) => `${folder}/${file}`))) {
  if (pages.has(path)) continue;
  if (check) stale.push(path);
  else rmSync(root + path);
}
if (stale.length > 0) {
  process.stderr.write(`pages differ from the declarations: ${stale.join(", ")}; run pnpm generate\n`);
  process.exit(1);
}
