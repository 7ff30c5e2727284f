import type { BookCell, Rule, Sheet } from "../book/book.js";
import { PLAIN, TITLE, INPUT, UNIT, formulaCell, headings, textCell } from "../book/cells.js";
import { inputRow, ruleOf } from "../calculation/input-row.js";
import type { GivenCell } from "./ledger-cells.js";

const FIRST = 5;
const COLUMNS = ["Key of the job", "Number", "Unit", "Meaning", "Allowed", "Check"];

function rowOf({ label, value, unit, input, isFixed }: GivenCell, row: string): readonly BookCell[] {
  if (input !== null && !isFixed) return inputRow({ label, value, unit, input }, row);
  return [
    textCell(`A${row}`, label, PLAIN),
    { at: `B${row}`, content: { number: value }, look: isFixed ? PLAIN : INPUT },
    textCell(`C${row}`, unit?.symbol ?? "", UNIT),
  ];
}

function ruleFor({ label, value, unit, input, isFixed }: GivenCell, at: string): readonly Rule[] {
  if (isFixed) return [];
  if (input !== null) return [ruleOf(at, { label, value, unit, input })];
  return [{ at, type: "custom", formula: `ISNUMBER(${at})`, title: label.slice(0, 31), says: "a number" }];
}

/** What the plan was worked out from: every amount of the job that a figure reads. */
export function givenSheet(givens: readonly GivenCell[]): {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
  readonly checks: string;
} {
  const rows = givens.map((given, at) => ({ given, row: String(FIRST + at) }));
  const last = String(FIRST + Math.max(0, givens.length - 1));
  const sheet: Sheet = {
    name: "Given",
    widths: [40, 14, 18, 44, 44, 48],
    heights: new Map(),
    cells: [
      textCell("A1", "What is given", TITLE),
      textCell("A2", "Change the yellow cells.", PLAIN),
      formulaCell("E1", '=IF(inputs_fit,"every input fits","not every input fits")', "every input fits", PLAIN),
      ...headings(FIRST - 1, COLUMNS),
      ...rows.flatMap(({ given, row }) => rowOf(given, row)),
    ],
    rules: rows.flatMap(({ given, row }) => ruleFor(given, `B${row}`)),
    liveLooks: [],
    notes: [],
  };
  const names = new Map(rows.map(({ given, row }) => [given.name, `'Given'!$B$${row}`]));
  return { sheet, names, checks: `'Given'!$F$${String(FIRST)}:$F$${last}` };
}
