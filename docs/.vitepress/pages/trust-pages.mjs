// What the numbers were held against: one screen of it, then every case, then where a source is wrong.
import { calculations, cases, isPublished, maths } from "./handbook.mjs";
import { book, capital, list, plain, table } from "./markdown.mjs";

const { inWords } = maths;
const kebabOf = new Map(calculations.map(({ name, kebab }) => [name, kebab]));
const published = cases.filter(isPublished);
const misprints = cases.filter(({ differs }) => differs?.startsWith("misprint"));

/** A plain number or fraction; null for what is told in words. */
function numberOf(text) {
  const found = /^(-?\d+(?:\.\d+)?)(?:\/(\d+))?$/u.exec(text);
  return found === null ? null : Number(found[1]) / Number(found[2] ?? 1);
}

/** A value as a page shows it: six figures are more than any loom asks. */
function shownExact(exact) {
  const value = numberOf(exact);
  if (value === null) return plain(exact);
  const short = String(Number(value.toPrecision(6)));
  return short === exact ? short : `≈ ${short}`;
}

/** How a printed number stands to the exact one. */
function standing({ prints, exact, differs }) {
  const [said, value] = [numberOf(prints.replace(/(?<=\d),(?=\d{3}\b)/gu, "")), numberOf(exact)];
  if (said === null || value === null) return differs === undefined ? "in words" : "differs";
  const places = /\.(\d+)$/u.exec(prints)?.[1].length ?? 0;
  const off = Math.abs(said - value) * 10 ** places;
  return off <= 0.5 + 1e-9 ? "to the last digit" : off <= 1 ? "by less than one in the last digit" : "differs";
}

/** Printed less exact, in per cent, where both are numbers of the same unit. */
function difference({ prints, exact }) {
  const [said, value] = [numberOf(prints), numberOf(exact)];
  if (said === null || value === null || value === 0) return "";
  const off = (100 * (said - value)) / value;
  return Math.abs(off) < 0.0005 ? "0" : `${off > 0 ? "+" : "−"}${String(Number(Math.abs(off).toPrecision(2)))} %`;
}

const linked = (name, up = ".") =>
  kebabOf.has(name) ? `[${inWords(name)}](${up}/formulas/${kebabOf.get(name)}.md)` : inWords(name);

/** Cases as rows: the reason beside the numbers it is about, the source last. */
export function casesTable(rows) {
  return table(
    ["case", "printed", "exact", "printed less exact", "why they differ", "source"],
    rows.map((row) => [
      plain(row.title),
      plain(row.prints),
      shownExact(row.exact),
      difference(row),
      plain(row.differs ?? ""),
      book(row.source, row.at) + (row.status === "read" ? "" : ` (${row.status})`),
    ]),
  );
}

function countsBy(keyOf, rows) {
  const counts = new Map();
  for (const row of rows) counts.set(keyOf(row), (counts.get(keyOf(row)) ?? 0) + 1);
  return counts;
}

/** The cases of a book, found on the page of them all. */
export function casesOfBook({ author, title }) {
  const words = `${author}, ${title}`.replaceAll("'", " ").slice(0, 80);
  return `./verification.html?of=${encodeURIComponent(words)}`;
}

export function trustPage() {
  const sources = new Set(published.map(({ source }) => source.key));
  const stands = countsBy(standing, published);
  const many = (name) => stands.get(name) ?? 0;
  const wrongBooks = new Set(misprints.map(({ source }) => source.key));
  const withCases = calculations.filter(({ name }) => published.some(({ call }) => call === name));
  const bookOf = new Map(published.map(({ source }) => [source.key, source]));
  const byBook = [...countsBy(({ source }) => source.key, published)].sort((a, b) => b[1] - a[1]).slice(0, 12);
  return [
    "# What was checked",
    `**${published.length} answers printed in ${sources.size} books, papers and pages** were worked again, exactly, and are run as tests. Every one of them can be found from here and redone by hand.`,
    table(
      ["the printed number", "cases"],
      [
        ["agrees to its last digit", many("to the last digit")],
        ["is less than one off in its last digit", many("by less than one in the last digit")],
        ["differs by more: rounded on the way, by another rule or in another unit, as its row says", many("differs")],
        ["is told in words, or with its unit, and was read by a person", many("in words")],
      ],
    ),
    list([
      `**Wrong in print:** ${misprints.length} numbers in ${wrongBooks.size} sources. The library keeps the exact value. [Which, and why](./errata.md)`,
      `**Formulas with at least one published case:** ${withCases.length} of ${calculations.length}. The others are marked "our own example, in no book".`,
      "**Held by programs others keep:** the units by GNU units and by a UCUM library; arithmetic against fractions of whole numbers; spreadsheet formulas recalculated by LibreOffice Calc; the cases by a few lines of Python that share nothing with the library.",
      "**What the check of an answer sees:** of fifteen mistakes that were printed, two are named, four are told by what is true of the number, nine are given no name, none a wrong one. [The whole table](./what-check-sees.md)",
      `**Not counted:** ${cases.filter(({ status }) => status !== "read").length} rows from memory or of common practice, and ${cases.filter((row) => row.status === "read" && row.prints === "").length} rows whose source prints a rule but no number.`,
    ]),
    "## From a printed sum to its row",
    "Look it up by book, formula or words: [every published case](./verification.md). A row names the page; the formula page has fields to put the numbers in. [How to redo one by hand](./guides/hand-checker.md)",
    "## The books most used",
    list(byBook.map(([key, count]) => `${book(bookOf.get(key))}: [${count} cases](${casesOfBook(bookOf.get(key))})`)),
    "[All sources](./sources.md), each with its cases.",
  ].join("\n\n");
}

export function verificationTable() {
  const calls = [...new Set(cases.map(({ call }) => call))].sort((a, b) => a.localeCompare(b));
  return [
    "# Every published case",
    `Every case below is run as a test against the exact answer, to twelve digits; here it is shown in six. ${published.length} were read in the source named; those with another mark, and those without a printed number, are not counted as published. [The sum of it](./trust.md)`,
    '<RowFilter label="Find a case" hint="by book, author, formula, number or words: Woodhouse, sett, 17.64" />',
    ...calls.map((call) => {
      const name = kebabOf.has(call) ? `\n\nFormula: ${linked(call)}` : "";
      return `## ${capital(inWords(call))}${name}\n\n${casesTable(cases.filter((one) => one.call === call))}`;
    }),
  ].join("\n\n");
}

export function errata() {
  const rows = misprints.map((row) => [
    `${plain(row.differs.replace(/^misprint: /u, ""))}`,
    plain(row.title),
    plain(row.prints),
    shownExact(row.exact),
    linked(row.call),
    book(row.source, row.at),
  ]);
  return [
    "# Where a source is wrong",
    "The library keeps the exact value. Each row says first why the source differs, then what it prints.",
    table(["why they differ", "case", "printed", "exact", "formula", "source"], rows),
  ].join("\n\n");
}
