import type { Quantity, Unit } from "../quantity/index.js";
import { declarationOf, plainTree } from "../formula/index.js";
import type { Calculation } from "../formula/index.js";
import { cellText, readCells } from "./cells.js";
import type { Cell } from "./cells.js";

/**
 * The formula of a calculation for a spreadsheet cell, in built-in functions only.
 *
 * A sheet reckons in doubles: roundings are guarded at nine decimals, and no cell checks the range of its inputs.
 *
 * @param calculation any calculation of the handbook
 * @param cells for each input its cell, with the unit of the numbers in it
 * @param unit the unit the answer is wanted in; null for an answer that is a plain number
 * @throws QuantityError "unreadable" for an address that is none, "wrong-kind" or "missing" for its unit
 */
export function spreadsheetFormula<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  cells: Readonly<Record<keyof I & string, Cell>>,
  unit: Unit<D> | null,
): string {
  const declared = declarationOf("spreadsheetFormula", calculation);
  const { addresses, units } = readCells(declared, "spreadsheetFormula", cells);
  return cellText(plainTree(declared, "spreadsheetFormula", units, unit), addresses);
}
