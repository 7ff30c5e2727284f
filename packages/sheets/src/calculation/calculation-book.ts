import { inWords, spreadsheetFormula, spreadsheetLines } from "@thrum/maths";
import type { Calculation, Quantity } from "@thrum/maths";
import type { Book } from "../book/book.js";
import { unitOf } from "./bounds.js";
import { definedName, givenOf, namedCells } from "./given.js";
import type { AnyCalculation } from "./given.js";
import { sourceText } from "./source-text.js";
import { sumSheet } from "./sum-sheet.js";
import { workingSheet } from "./working-sheet.js";

/** Names that a line may bear though an input has it already. */
function placed(taken: ReadonlySet<string>): (name: string) => string {
  return (name) => {
    const plain = definedName(name);
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
export function calculationBook<I>(calculation: Calculation<I, Quantity<string> | number>, input: NoInfer<I>): Book {
  const answer = calculation(input);
  const any = calculation as unknown as AnyCalculation;
  const declared = calculation.declaration;
  const unit = typeof answer === "number" ? null : unitOf(answer);
  const given = givenOf(declared, input as Readonly<Record<string, unknown>>);
  const place = placed(new Set(given.map(({ name }) => name)));
  const cells = namedCells(given);
  const lines = spreadsheetLines(any, cells, unit, place);
  const oneCell = spreadsheetFormula(any, cells, unit);
  const now = typeof answer === "number" ? answer : answer.in(unitOf(answer));
  const title = inWords(declared.name);
  const heading = `${(title[0] ?? "").toUpperCase()}${title.slice(1)}`;
  const source = sourceText(declared.source);
  const working = workingSheet({ heading, lines, place, oneCell, now, source });
  const sum = sumSheet({ heading, given, declared, unit, now, place, answer: working.answer, source });
  return { sheets: [sum.sheet, working.sheet], names: new Map([...sum.names, ...working.names]) };
}
