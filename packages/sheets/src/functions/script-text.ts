import { inWords } from "@thrum/maths";
import type { AnyCalculation } from "@thrum/maths";
import { withCapital } from "../names.js";
import { functions, parametersOf } from "./parameters.js";

/** Help is cut by some programs at this length, so none is longer. */
const LONGEST_HELP = 250;

/** One line that cannot end the comment it stands in. */
function line(text: string): string {
  return text.replace(/\*\//gu, "* /").replace(/\s+/gu, " ").slice(0, LONGEST_HELP);
}

function functionText(name: string, { declaration }: AnyCalculation): string {
  const parameters = parametersOf(declaration);
  const names = parameters.map((parameter) => parameter.name).join(", ");
  const { author, year } = declaration.source;
  const what = `${inWords(declaration.name)}, from ${Object.keys(declaration.inputs).map(inWords).join(", ")}. After ${author}, ${year}.`;
  const types = {
    value: "{number|Array<Array<number>>}",
    list: "{Array<Array<number>>}",
    unit: "{string}",
    word: "{string}",
  };
  const help = parameters.map((one) => ` * @param ${types[one.role]} ${one.name} ${line(one.help)}`);
  const unit = parameters.at(-1)?.field === null ? "in the unit asked for" : declaration.result.noun;
  return [
    "/**",
    ` * ${line(withCapital(what))}`,
    " *",
    ...help,
    ` * @return {number|Array<Array<number>>} ${line(unit)}`,
    " * @customfunction",
    " */",
    `function ${name}(${names}) {`,
    `  return Thrum_.answer("${name}", [${names}]);`,
    "}",
  ].join("\n");
}

const COMPANIONS = `/**
 * The working of a function of Thrum, line by line, as rows.
 *
 * @param {string} name the function, as text: "WARP_LENGTH"
 * @param {any} given what the function is given, argument by argument
 * @return {Array<Array<string>>} rows of line, sum in words, sum in numbers, value
 * @customfunction
 */
function THRUM_WORKING(name, ...given) {
  return Thrum_.workingRows(name, given);
}
/**
 * Whether a number worked out by hand is right, and which slip would give it.
 *
 * @param {string} name the function, as text: "WARP_LENGTH"
 * @param {string} written the number as it was written, as text, for its digits count: "6.94"
 * @param {any} given what the function is given, argument by argument
 * @return {Array<Array<string>>} rows: the verdict, then the slips
 * @customfunction
 */
function THRUM_CHECK(name, written, ...given) {
  return Thrum_.checkRows(name, written, given);
}`;

/** The plain functions of a script, with the help a spreadsheet shows; `Thrum_` before them does the sums. */
export function scriptText(): string {
  return [...[...functions].map(([name, calculation]) => functionText(name, calculation)), COMPANIONS].join("\n");
}
