import type { BookCell, Sheet } from "../book/book.js";
import { PLAIN, TITLE, columnLetters, formulaCell, headings, textCell } from "../book/cells.js";
import type { ListRow } from "./ledger-cells.js";

const FIRST = 5;

/** The lists that sums add up, each as a range in one unit, its members read where they stand. */
export function listsSheet(lists: readonly ListRow[]): {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
} {
  const column = (at: number): string => columnLetters(at + 2);
  const cells = lists.flatMap(({ label, members }, at): readonly BookCell[] => {
    const row = String(FIRST + at);
    const own = members.map(({ formula, now }, place): BookCell => {
      const cell = `${column(place)}${row}`;
      return formula === null
        ? { at: cell, content: { number: now }, look: PLAIN }
        : formulaCell(cell, formula, now, PLAIN);
    });
    return [textCell(`A${row}`, label, PLAIN), ...own];
  });
  const names = new Map(
    lists.map(({ name, members }, at) => {
      const row = String(FIRST + at);
      const last = members.length > 1 ? `:$${column(members.length - 1)}$${row}` : "";
      return [name, `'Lists'!$B$${row}${last}`];
    }),
  );
  const sheet: Sheet = {
    name: "Lists",
    widths: [44, 16, 16, 16, 16],
    heights: new Map(),
    cells: [
      textCell("A1", "Lists that are added up", TITLE),
      textCell("A2", "Each member is read from the sheets Plan and Given; a list of none is 0.", PLAIN),
      ...headings(FIRST - 1, ["List", "Members"]),
      ...cells,
    ],
    rules: [],
    liveLooks: [],
    notes: [],
  };
  return { sheet, names };
}
