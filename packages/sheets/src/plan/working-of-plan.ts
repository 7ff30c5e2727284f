import { inWords, sourceText, spreadsheetLines } from "@thrum/maths";
import type { BookCell, Note, Sheet } from "../book/book.js";
import { DOUBTFUL, TITLE, WARNING, formulaCell, headings, textCell } from "../book/cells.js";
import { workingRow } from "../calculation/working-row.js";
import type { GridGroup } from "./grid.js";
import type { FigureCell, Ledger } from "./ledger-cells.js";

const FIRST = 5;

/** The sheet that shows every sum of the plan line by line, each line a formula that reads other cells by name. */
export function workingOfPlan(
  groups: readonly GridGroup[],
  { figures, nameOf }: Ledger,
): {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
} {
  const names = new Map<string, string>();
  const cells: BookCell[] = [];
  const notes: Note[] = [];
  let row = FIRST;

  function sumRows({ sum, cells: read, unit, now, name }: FigureCell): void {
    const { calculation, label, row: of } = sum;
    if (calculation === null) return;
    const called = new Map<string, string>();
    const place = (line: string): string => {
      const known = called.get(line) ?? nameOf("line", name, line);
      called.set(line, known);
      return known;
    };
    cells.push(...headings(row, [of === null ? label : `${label}, ${of}`, "", "", ""]));
    row += 1;
    const lines = spreadsheetLines(calculation, read, unit, place);
    for (const [at, line] of lines.entries()) {
      const isLast = at === lines.length - 1;
      const own = String(row);
      cells.push(...workingRow(own, { ...line, label: isLast ? label : inWords(line.name), now: isLast ? now : null }));
      names.set(place(line.name), `'Working'!$C$${own}`);
      if (isLast) notes.push({ at: `C${own}`, text: `Source: ${sourceText(calculation.declaration.source)}` });
      row += 1;
    }
  }

  for (const { rows } of groups)
    for (const { sums } of rows)
      for (const sum of sums) {
        const cell = figures.get(sum);
        if (cell !== undefined) sumRows(cell);
      }
  const wrong = 'IF(inputs_fit,"","Not every input fits. The numbers below mean nothing.")';
  const sheet: Sheet = {
    name: "Working",
    widths: [30, 60, 20, 18],
    heights: new Map(),
    cells: [
      textCell("A1", "The working, line by line", TITLE),
      formulaCell("A2", `=${wrong}`, "", WARNING),
      ...headings(FIRST - 1, ["Line", "Sum", "Number", "Unit"]),
      ...cells,
    ],
    rules: [],
    liveLooks: [{ at: `C${String(FIRST)}:C${String(row)}`, formula: "NOT(inputs_fit)", look: DOUBTFUL }],
    notes,
  };
  return { sheet, names };
}
