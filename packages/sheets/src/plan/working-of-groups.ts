import type { BookCell, Note, Sheet } from "../book/book.js";
import { WARNING, DOUBTFUL, formulaCell, headings, textCell, TITLE } from "../book/cells.js";
import { sourceText } from "../calculation/source-text.js";
import { workingRow } from "../calculation/working-row.js";
import type { LedgerGroup } from "./ledger.js";

const FIRST = 5;

/** The sheet that shows every sum of the plan line by line, each line a formula that reads other cells by name. */
export function workingOfGroups(groups: readonly LedgerGroup[]): {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
} {
  const names = new Map<string, string>();
  const cells: BookCell[] = [];
  const notes: Note[] = [];
  let row = FIRST;
  for (const { heading, entries } of groups) {
    cells.push(...headings(row, [heading, "", "", ""]));
    row += 1;
    for (const entry of entries) {
      if (entry.what === "given") continue;
      for (const line of entry.lines) {
        const isAnswer = line.name === entry.name;
        cells.push(...workingRow(String(row), isAnswer ? { ...line, label: entry.label } : line));
        names.set(line.name, `'Working'!$C$${String(row)}`);
        if (isAnswer && entry.source !== null) notes.push({ at: `C${String(row)}`, text: sourceText(entry.source) });
        row += 1;
      }
    }
    row += 1;
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
