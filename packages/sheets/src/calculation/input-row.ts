import type { BookCell, Rule } from "../book/book.js";
import { formulaCell, INPUT, PLAIN, textCell, UNIT, WARNING, WRAPPED } from "../book/cells.js";
import { allowed, checkFormula, comparisons } from "./bounds.js";
import type { GivenCell } from "./given.js";

/** What may be typed into the cell of an input. */
export function ruleOf(at: string, { input, unit, label }: GivenCell): Rule {
  const tests = [`ISNUMBER(${at})`, ...comparisons(at, input, unit)];
  return {
    at,
    type: "custom",
    formula: `AND(${tests.join(",")})`,
    title: label.slice(0, 31),
    says: allowed(input, unit).slice(0, 250),
  };
}

/** An input as a row of its sheet: what it is called, its yellow cell, its unit and what may stand there. */
export function inputRow(cell: GivenCell, row: string): readonly BookCell[] {
  const { label, value, unit, input } = cell;
  return [
    textCell(`A${row}`, label, PLAIN),
    { at: `B${row}`, content: { number: value }, look: INPUT },
    textCell(`C${row}`, unit === null ? (input.what === "whole" ? input.noun : "") : unit.symbol, UNIT),
    textCell(`D${row}`, input.meaning, WRAPPED),
    textCell(`E${row}`, allowed(input, unit), WRAPPED),
    formulaCell(`F${row}`, checkFormula(`B${row}`, input, unit), "", WARNING),
  ];
}
