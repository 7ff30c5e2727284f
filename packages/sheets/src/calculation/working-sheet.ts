import { inWords } from "@thrum/maths";
import type { SpreadsheetLine } from "@thrum/maths";
import type { Sheet } from "../book/book.js";
import { DOUBTFUL, formulaCell, headings, PLAIN, textCell, TITLE, WARNING, WRAPPED } from "../book/cells.js";
import { workingRow } from "./working-row.js";

interface WorkingParts {
  readonly heading: string;
  readonly lines: readonly SpreadsheetLine[];
  readonly place: (name: string) => string;
  readonly oneCell: string;
  readonly now: number;
  readonly source: string;
}

const FIRST = 5;

/** The sheet that shows the working line by line, each line a formula that reads the ones above it. */
export function workingSheet({ heading, lines, place, oneCell, now, source }: WorkingParts): {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
  /** The name of the last line. */
  readonly answer: string;
} {
  const names = new Map<string, string>();
  const rows = lines.flatMap(({ name, words, formula, unit }, index) => {
    const row = String(FIRST + index);
    const isLast = index === lines.length - 1;
    names.set(place(name), `'Working'!$C$${row}`);
    return workingRow(row, { label: inWords(name), words, formula, unit, now: isLast ? now : null });
  });
  const end = String(FIRST + lines.length - 1);
  const below = String(FIRST + lines.length + 1);
  const same = `=IF(ABS(C${below}-C${end})<=1E-9*ABS(C${end}),"the same","not the same: this sheet was changed")`;
  const sheet: Sheet = {
    name: "Working",
    widths: [28, 60, 20, 18],
    heights: new Map(),
    cells: [
      textCell("A1", `${heading}: the working`, TITLE),
      formulaCell(
        "A2",
        '=IF(inputs_fit,"","Not every input fits: see the sheet Sum. The numbers below mean nothing.")',
        "",
        WARNING,
      ),
      ...headings(FIRST - 1, ["Line", "Sum", "Number", "Unit"]),
      ...rows,
      textCell(`A${below}`, "all in one cell", PLAIN),
      textCell(`B${below}`, oneCell, WRAPPED),
      formulaCell(`C${below}`, oneCell, now, PLAIN),
      formulaCell(`D${below}`, same, "the same", PLAIN),
      textCell(`A${String(FIRST + lines.length + 3)}`, source, PLAIN),
    ],
    rules: [],
    liveLooks: [{ at: `C${String(FIRST)}:C${end}`, formula: "NOT(inputs_fit)", look: DOUBTFUL }],
    notes: [{ at: `C${end}`, text: source }],
  };
  return { sheet, names, answer: place(lines.at(-1)?.name ?? "") };
}
