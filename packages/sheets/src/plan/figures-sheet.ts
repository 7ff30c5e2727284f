import { inWords, sourceText } from "@thrum/maths";
import { pathText } from "@thrum/plan";
import type { PlanSum } from "@thrum/plan";
import type { BookCell, Note, Rule, Sheet } from "../book/book.js";
import {
  ANSWER,
  INPUT,
  PLAIN,
  TITLE,
  UNIT,
  WARNING,
  columnLetters,
  formulaCell,
  headings,
  textCell,
} from "../book/cells.js";
import { withCapital } from "../names.js";
import type { GridGroup } from "./grid.js";
import type { Ledger } from "./ledger-cells.js";

const FIRST = 5;
const SAYS =
  "Yellow cells may be changed, here, on the sheet Given and on the sheet Stripes; the rest is worked out. What is counted in a list of the job stays as it was counted.";

/** Letters of the column of a row of the scope: the first two are the label and the unit. */
function columnOf(at: number): string {
  return columnLetters(at + 3);
}

/** Why there is no number. */
function absence({ value, needs, why }: PlanSum): { readonly shown: string; readonly said: string } | null {
  if (value !== null) return null;
  if (why !== null) return { shown: "none", said: why };
  return { shown: "waits", said: needs.length === 0 ? "not asked for" : `waits for ${needs.map(pathText).join(", ")}` };
}

/** All figures of the plan: one a row, its rows of the scope side by side. */
export function figuresSheet(
  title: string,
  groups: readonly GridGroup[],
  { figures }: Ledger,
  rowTitles: ReadonlyMap<string, string>,
): { readonly sheet: Sheet; readonly names: ReadonlyMap<string, string> } {
  const names = new Map<string, string>();
  const cells: BookCell[] = [];
  const notes: Note[] = [];
  const rules: Rule[] = [];
  let widest = 1;

  function valueCell(sum: PlanSum, at: string): BookCell {
    const cell = figures.get(sum);
    const absent = absence(sum);
    if (absent !== null) notes.push({ at, text: absent.said });
    if (cell === undefined)
      return textCell(at, absent?.shown ?? (typeof sum.value === "string" ? sum.value : ""), PLAIN);
    names.set(cell.name, `'Plan'!$${at.replace(/(\d+)$/u, "$$$1")}`);
    if (cell.formula === null) {
      const says = "a number, counted in the lists of the job";
      rules.push({ at, type: "custom", formula: `AND(ISNUMBER(${at}),${at}>=0)`, title: sum.label.slice(0, 31), says });
      return { at, content: { number: cell.now }, look: INPUT };
    }
    if (sum.calculation !== null) notes.push({ at, text: `Source: ${sourceText(sum.calculation.declaration.source)}` });
    const look =
      cell.unit === null && Number.isInteger(cell.now) ? ANSWER : { ...ANSWER, shows: "three places" as const };
    return formulaCell(at, cell.formula, cell.now, look);
  }

  let row = FIRST;
  for (const { group, rowNames, rows } of groups) {
    const titles = rowNames.map((name) => (name === null ? "" : (rowTitles.get(`${group} ${name}`) ?? name)));
    widest = Math.max(widest, titles.length);
    cells.push(...headings(row, [withCapital(inWords(group)), "Unit", ...titles]));
    row += 1;
    for (const { label, sums } of rows) {
      const own = String(row);
      const units = sums.map((sum) => figures.get(sum)?.unit?.symbol ?? "");
      const unit = new Set(units).size <= 1 ? (units[0] ?? "") : units.join(", ");
      cells.push(textCell(`A${own}`, label, PLAIN), textCell(`B${own}`, unit, UNIT));
      for (const sum of sums) cells.push(valueCell(sum, `${columnOf(rowNames.indexOf(sum.row))}${own}`));
      row += 1;
    }
    row += 1;
  }
  const wrong =
    'IF(inputs_fit,"","Not every input fits: look for what is said in red on the sheets Given and Stripes.")';
  const sheet: Sheet = {
    name: "Plan",
    widths: [32, 16, ...Array.from({ length: widest }, () => 16)],
    heights: new Map(),
    cells: [
      textCell("A1", title, TITLE),
      textCell("A2", SAYS, PLAIN),
      formulaCell("A3", `=${wrong}`, "", WARNING),
      ...cells,
    ],
    rules,
    liveLooks: [],
    notes,
  };
  return { sheet, names };
}
