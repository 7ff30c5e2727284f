import type { BookCell, Note, Rule, Sheet } from "../book/book.js";
import { ANSWER, ANSWER_UNIT, formulaCell, headings, PLAIN, textCell, TITLE, WARNING, WRAPPED } from "../book/cells.js";
import { inputRow, ruleOf } from "../calculation/input-row.js";
import { sourceText } from "../calculation/source-text.js";
import type { Answered, LedgerGroup } from "./ledger.js";

interface SheetOfGroups {
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly groups: readonly LedgerGroup[];
}

const FIRST = 5;
const COLUMNS = ["Amount", "Number", "Unit", "Meaning", "Allowed", "Check"];

function answerRow({ label, name, tests, unit, now, lines, isCount }: Answered, row: string): readonly BookCell[] {
  return [
    textCell(`A${row}`, label, ANSWER),
    formulaCell(
      `B${row}`,
      `=IF(inputs_fit,IF(AND(${tests}),${name},NA()),NA())`,
      now,
      isCount ? ANSWER : { ...ANSWER, shows: "three places" },
    ),
    textCell(`C${row}`, unit, ANSWER_UNIT),
    textCell(`D${row}`, lines.at(-1)?.words ?? "", WRAPPED),
  ];
}

/** A sheet of groups: what may be changed in yellow, and below it what comes of it; `checks` is its column of faults. */
export function groupsSheet({ name: sheetName, title, says, groups }: SheetOfGroups): {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
  readonly checks: string;
} {
  const names = new Map<string, string>();
  const cells: BookCell[] = [];
  const rules: Rule[] = [];
  const notes: Note[] = [];
  let row = FIRST;
  for (const { heading, entries } of groups) {
    cells.push(...headings(row, [heading, ...COLUMNS.slice(1).map(() => "")]));
    row += 1;
    for (const entry of entries) {
      const own = String(row);
      if (entry.what === "given") {
        cells.push(...inputRow(entry, own));
        rules.push(ruleOf(`B${own}`, entry));
        names.set(entry.name, `'${sheetName}'!$B$${own}`);
      } else {
        cells.push(...answerRow(entry, own));
        if (entry.source !== null) notes.push({ at: `B${own}`, text: sourceText(entry.source) });
      }
      row += 1;
    }
    row += 1;
  }
  const wrong = `IF(inputs_fit,"","Not every input fits: look for what is said in red beside them, on every sheet.")`;
  const sheet: Sheet = {
    name: sheetName,
    widths: [27, 14, 18, 44, 44, 48],
    heights: new Map(),
    cells: [
      textCell("A1", title, TITLE),
      textCell("A2", says, PLAIN),
      formulaCell("A3", `=${wrong}`, "", WARNING),
      ...headings(FIRST - 1, COLUMNS),
      ...cells,
    ],
    rules,
    liveLooks: [],
    notes,
  };
  return { sheet, names, checks: `'${sheetName}'!$F$${String(FIRST)}:$F$${String(row)}` };
}
