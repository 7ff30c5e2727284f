export { isDefinedName } from "./cells.js";
export type { Cell } from "./cells.js";
export { spreadsheetFormula } from "./spreadsheet-formula.js";
export { spreadsheetLines } from "./spreadsheet-lines.js";
export type { SpreadsheetLine } from "./spreadsheet-lines.js";
