// The page of a formula, from its declaration and its cited cases. A part that cannot be made stops the command.
import { codeSample } from "./code-sample.mjs";
import { casesOf, isPublished, maths, sentencesOf, shownCase, unitOf } from "./handbook.mjs";
import { limitsOf } from "./limits.mjs";
import { book, bookText, capital, fence, list, plain, table } from "./markdown.mjs";
import { partOf, relatedTo } from "./order-of-work.mjs";
import { casesTable } from "./trust-pages.mjs";

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
    `## In a spreadsheet\n\nBuilt-in functions only, for the sum the page opens with; with your own numbers use "the cell formula" beside the answer. The answer is ${unit === null ? "a plain number" : `counted in ${plain(unit.symbol)}`}.`,
    table(["cell", "holds", "in"], rows),
    fence("text", formula),
  ];
}

/** The units that a rule of thumb reckons in, whatever units its numbers come in. */
function reckonedPart({ inputs, result }) {
  const told = [...Object.entries(inputs), ["the answer", result]].flatMap(([field, { reckonedIn }]) => {
    if (reckonedIn === undefined) return [];
    const units =
      typeof reckonedIn === "string"
        ? `the ${inWords(reckonedIn)} named`
        : reckonedIn.map(({ name }) => plain(inWords(name))).join(" or ");
    return [`${plain(inWords(field))} in ${units}`];
  });
  if (told.length === 0) return [];
  return [`Its constants are for these units, into which whatever is given is turned: ${told.join(", ")}.`];
}

/** The working without the list of its inputs: they stand in the form. */
const linesOf = (calculation, input) =>
  asMarkdown(explain(calculation, input))
    .replace(/^(?:\|.*\n)+\n*/u, "")
    .replace(/\n*Source: .*$/u, "");

export function formulaPage(one) {
  const { name, calculation, declaration } = one;
  const own = casesOf(name);
  const { title, source, at, input } = shownCase(one);
  const lines = declaration.formula.split("\n").map((line) => line.trim());
  const ranges = Object.entries(declaration.inputs).map(
    ([field, rest]) => `${plain(inWords(field))} ${boundsOf(rest)}`,
  );
  const { result } = declaration;
  const slips = declaration.slips.map(({ says }) => `A sum that ${plain(says)}.`);
  const limits = limitsOf(one);
  const sentence = sentencesOf(one);
  const front = {
    formula: name,
    folder: one.folder,
    sentence: sentence.replace(/\s+/gu, " ").split(/(?<=\.)\s/u)[0],
    caption: `${capital(title)}${source === null ? "" : ` (${bookText(source, at)})`}.`,
    part: partOf(one),
  };
  return [
    `---\n${Object.entries(front)
      .map(([key, value]) => `${key}: ${JSON.stringify(value)}`)
      .join("\n")}\n---`,
    `# ${capital(inWords(name))}`,
    sentence,
    "<!-- live -->",
    linesOf(calculation, input),
    "<!-- /live -->",
    "<!-- drawing -->",
    "## Formula",
    fence("formula", lines.filter(Boolean).join("\n")),
    ...reckonedPart(declaration),
    `The answer: ${plain([result.noun, result.meaning].filter(Boolean).join(", "))}. What may stand in each field: ${ranges.join("; ")}. Source: ${book(declaration.source)}.`,
    ...(own.length === 0 ? [] : [`## ${own.every(isPublished) ? "Published cases" : "Cases"}\n\n${casesTable(own)}`]),
    ...spreadsheetPart(one, input),
    `## In code\n\n${fence("ts", codeSample(one, input))}`,
    ...(limits.length === 0 ? [] : [`## When not to use it\n\n${list(limits)}`]),
    ...(slips.length === 0 ? [] : [`## Slips\n\n${list(slips)}`]),
    `## Related\n\n${list(relatedTo(one).map((other) => `[${capital(inWords(other.name))}](./${other.kebab}.md)`))}`,
    `Source file: \`${one.path}\`, test: \`${one.path.replace(/\.ts$/u, ".test.ts")}\`.`,
  ].join("\n\n");
}
