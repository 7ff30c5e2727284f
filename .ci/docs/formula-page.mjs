// The page of a formula, from its declaration and its cited cases. A part that cannot be made stops the command.
import { codeSample } from "./code-sample.mjs";
import { casesOf, maths, sentencesOf, shownCase, unitOf } from "./handbook.mjs";
import { limitsOf, relatedTo } from "./limits.mjs";
import { book, capital, fence, list, plain, table } from "./markdown.mjs";

const { asMarkdown, explain, inWords, spreadsheetFormula } = maths;
const LETTERS = "ABCDEFGHIJKLMNOP";
const PERCENT = ["loss", "addition", "share"];

function boundsOf({ range, dimension, what, member, words, mayBeEmpty }) {
  if (what === "list") return `${mayBeEmpty ? "none" : "one"} or more, each ${boundsOf(member)}`;
  if (what === "word") return words.join(", ");
  const shown = (bound) => (PERCENT.includes(dimension) ? `${bound * 100} %` : String(bound));
  const bounds = [
    range.atLeast === null ? "" : `${shown(range.atLeast)} or more`,
    range.above === null ? "" : `more than ${shown(range.above)}`,
    range.below === null ? "" : `less than ${shown(range.below)}`,
    range.atMost === undefined ? "" : `no more than ${shown(range.atMost)}`,
  ];
  return bounds.filter(Boolean).join(", ") || "any";
}

/** The cells of a case in row 2, in the units of the case, and the formula over them. */
function sheetOf({ calculation, declaration }, input) {
  /** Of another input of the kind, where a list has no member to tell. */
  const unitLike = (dimension) => {
    const same = Object.entries(declaration.inputs).find(
      ([name, one]) => one.dimension === dimension && one.what === "quantity" && input[name] !== undefined,
    );
    return same === undefined ? null : unitOf(input[same[0]]);
  };
  const placed = Object.entries(declaration.inputs).map(([field, { what, dimension }], index) => {
    const column = LETTERS[index];
    const given = input[field];
    if (what === "unit") return { field, address: "", unit: given, cell: given };
    const isList = what === "list" && given.length > 0;
    const address = isList ? `${column}2:${column}${String(given.length + 1)}` : `${column}2`;
    const first = what === "list" ? given[0] : given;
    const unit = typeof first === "object" ? unitOf(first) : first === undefined ? unitLike(dimension) : null;
    return { field, address, unit, cell: unit === null ? address : [address, unit] };
  });
  const answer = calculation(input);
  const cells = Object.fromEntries(placed.map(({ field, cell }) => [field, cell]));
  const unit = typeof answer === "number" ? null : unitOf(answer);
  return { placed, unit, formula: spreadsheetFormula(calculation, cells, unit) };
}

function spreadsheetPart(one, input) {
  const { placed, unit, formula } = sheetOf(one, input);
  const rows = placed
    .filter(({ address }) => address !== "")
    .map(({ field, address, unit: own }) => [address, plain(inWords(field)), own === null ? "" : plain(own.symbol)]);
  return [
    `## In a spreadsheet\n\nBuilt-in functions only; the answer is ${unit === null ? "a plain number" : `counted in ${plain(inWords(unit.name))}`}.`,
    table(["cell", "holds", "in"], rows),
    fence("text", formula),
  ];
}

export function casesTable(rows) {
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

export function formulaPage(one) {
  const { name, calculation, declaration } = one;
  const own = casesOf(name);
  const { title, source, at, input } = shownCase(one);
  const lines = declaration.formula.split("\n").map((line) => line.trim());
  const inputs = Object.entries(declaration.inputs).map(([field, { noun, meaning, ...rest }]) => [
    plain(inWords(field)),
    plain(noun),
    plain(meaning),
    boundsOf(rest),
  ]);
  const { result } = declaration;
  const slips = declaration.slips.map(({ says }) => `A sum that ${plain(says)}.`);
  return [
    `---\nformula: ${name}\nfolder: ${one.folder}\n---`,
    `# ${capital(inWords(name))}`,
    sentencesOf(one),
    fence("formula", lines.filter(Boolean).join("\n")),
    table(["input", "kind", "meaning", "range"], inputs),
    `The answer: ${plain([result.noun, result.meaning].filter(Boolean).join(", "))}. Source: ${book(declaration.source)}.`,
    `## Worked through\n\n${capital(plain(title))}${source === null ? "" : ` (${book(source, at)})`}.`,
    "<!-- live -->",
    asMarkdown(explain(calculation, input)),
    "<!-- /live -->",
    ...(own.length === 0 ? [] : [`## Published cases\n\n${casesTable(own)}`]),
    ...spreadsheetPart(one, input),
    `## In code\n\n${fence("ts", codeSample(one, input))}`,
    `## When not to use it\n\n${list(limitsOf(one))}`,
    ...(slips.length === 0 ? [] : [`## Slips\n\n${list(slips)}`]),
    `## Related\n\n${list(relatedTo(one))}`,
    `Source file: \`${one.path}\`, test: \`${one.path.replace(/\.ts$/u, ".test.ts")}\`.`,
  ].join("\n\n");
}
