import type { Calculation, Quantity } from "@thrum/maths";
import { xlsxOf } from "./book/xlsx-of.js";
import { calculationBook } from "./calculation/calculation-book.js";

/**
 * A calculation as an .xlsx workbook whose every computed cell is an ordinary built-in formula: no macro, no add-in.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @returns the bytes of the file, always the same for the same input
 * @throws QuantityError as the calculation itself would
 * @example workbookOf(reedWidth, { ends: 368, sett: endsPerInch(20) }).length > 1000 // true
 */
export function workbookOf<I>(calculation: Calculation<I, Quantity<string> | number>, input: NoInfer<I>): Uint8Array {
  return xlsxOf(calculationBook(calculation, input));
}
