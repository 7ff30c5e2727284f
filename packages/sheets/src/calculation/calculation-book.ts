import { inWords, sourceText, spreadsheetFormula, spreadsheetLines } from "@thrum/maths";
import type { AnyCalculation } from "@thrum/maths";
import type { Book } from "../book/book.js";
import { snakeCase, withCapital } from "../names.js";
import { numberOf, unitOrNone } from "./amounts.js";
import { givenOf, namedCells } from "./given.js";
import { sumSheet } from "./sum-sheet.js";
import { workingSheet } from "./working-sheet.js";

/** Names that a line may bear though an input has it already. */
function placed(taken: ReadonlySet<string>): (name: string) => string {
  return (name) => {
    const plain = snakeCase(name);
    return taken.has(plain) || plain.length < 3 ? `${plain}_line` : plain;
  };
}

/**
 * A calculation as a workbook of two sheets: the sum with its inputs, which a reader may change, and the working line by
 * line. Every computed cell is an ordinary formula, with the library's own answer as the value it has now.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @throws QuantityError as the calculation itself would
 */
export function calculationBook(calculation: AnyCalculation, input: Readonly<Record<string, unknown>>): Book {
  const answer = calculation(input);
  const declared = calculation.declaration;
  const unit = unitOrNone(answer);
  const given = givenOf(declared, input);
  const place = placed(new Set(given.map(({ name }) => name)));
  const cells = namedCells(given);
  const lines = spreadsheetLines(calculation, cells, unit, place);
  const oneCell = spreadsheetFormula(calculation, cells, unit);
  const now = numberOf(answer);
  const heading = withCapital(inWords(declared.name));
  const source = `Source: ${sourceText(declared.source)}`;
  const working = workingSheet({ heading, lines, place, oneCell, now, source });
  const sum = sumSheet({ heading, given, declared, unit, now, place, answer: working.answer, source });
  return { sheets: [sum.sheet, working.sheet], names: new Map([...sum.names, ...working.names]) };
}
