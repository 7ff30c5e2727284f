import type { BookCell } from "../book/book.js";
import { ANSWER, formulaCell, PLAIN, textCell, UNIT, WRAPPED } from "../book/cells.js";

/** A line of a working; `now` is the value of an answer, null for a line on the way to it. */
export interface WorkingLine {
  readonly label: string;
  readonly words: string;
  readonly formula: string;
  readonly unit: string;
  readonly now: number | null;
}

/** A line of a working as a row of its sheet. */
export function workingRow(row: string, { label, words, formula, unit, now }: WorkingLine): readonly BookCell[] {
  return [
    textCell(`A${row}`, label, PLAIN),
    textCell(`B${row}`, words, WRAPPED),
    formulaCell(`C${row}`, formula, now, now === null ? PLAIN : ANSWER),
    textCell(`D${row}`, unit, UNIT),
  ];
}
