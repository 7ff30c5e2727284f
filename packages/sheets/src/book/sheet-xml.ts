import type { BookCell, Content, Sheet } from "./book.js";
import type { Styles } from "./styles.js";
import { escapedForXml, part } from "./xml.js";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** The row and the number of the column of an address such as B2. */
export function placeOf(at: string): { readonly row: number; readonly column: number } {
  const [, letters = "", digits = ""] = /^([A-Z]{1,3})([1-9]\d{0,6})$/u.exec(at) ?? [];
  if (letters === "") throw new RangeError(`${at} is no cell`);
  const column = Array.from(letters).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { row: Number(digits), column };
}

function finite(number: number): string {
  if (!Number.isFinite(number)) throw new RangeError("a cell holds finite numbers only");
  return String(number);
}

function contentXml(content: Content, head: string): string {
  if ("text" in content)
    return `${head} t="inlineStr"><is><t xml:space="preserve">${escapedForXml(content.text)}</t></is></c>`;
  if ("number" in content) return `${head}><v>${finite(content.number)}</v></c>`;
  const formula = `<f>${escapedForXml(content.formula.replace(/^=/u, ""))}</f>`;
  if (content.now === null) return `${head}>${formula}</c>`;
  return typeof content.now === "string"
    ? `${head} t="str">${formula}<v>${escapedForXml(content.now)}</v></c>`
    : `${head}>${formula}<v>${finite(content.now)}</v></c>`;
}

const LINE = 14;
const TITLE_LINE = 24;

/** The height a row needs for its text: some programs leave it as it is and cut wrapped text off. */
function heightOf(cells: readonly BookCell[], widths: readonly number[]): number {
  const lines = cells.map(({ at, content, look }) => {
    if (look.wrap !== true || !("text" in content)) return 1;
    // A letter is narrower than the digit widths are counted in; but a line broken at words is not filled to its end.
    return Math.ceil((content.text.length * 0.95) / (widths[placeOf(at).column - 1] ?? 10));
  });
  return cells.some(({ look }) => look.large === true) ? TITLE_LINE : LINE * Math.max(1, ...lines);
}

function rowsXml({ cells, widths, heights }: Sheet, styles: Styles): string {
  const rows = new Map<number, BookCell[]>();
  for (const cell of cells) {
    const { row } = placeOf(cell.at);
    rows.set(row, [...(rows.get(row) ?? []), cell]);
  }
  return [...rows]
    .sort(([a], [b]) => a - b)
    .map(([row, own]) => {
      const inOrder = own
        .sort((a, b) => placeOf(a.at).column - placeOf(b.at).column)
        .map((cell) => contentXml(cell.content, `<c r="${cell.at}" s="${String(styles.numberOf(cell))}"`));
      const height = heights.get(row) ?? heightOf(own, widths);
      return `<row r="${String(row)}" ht="${String(height)}" customHeight="1">${inOrder.join("")}</row>`;
    })
    .join("");
}

/** A sheet, its elements in the order the standard (ECMA-376) asks for. */
export function sheetXml(sheet: Sheet, styles: Styles): string {
  const columns = sheet.widths.map(
    (width, at) => `<col min="${String(at + 1)}" max="${String(at + 1)}" width="${String(width)}" customWidth="1"/>`,
  );
  const liveLooks = sheet.liveLooks.map(
    ({ at, formula, look }, index) =>
      `<conditionalFormatting sqref="${at}"><cfRule type="expression" dxfId="${String(styles.numberOfLive(look))}" priority="${String(index + 1)}"><formula>${escapedForXml(formula)}</formula></cfRule></conditionalFormatting>`,
  );
  const rules = sheet.rules.map(
    ({ at, type, formula, title, says }) =>
      `<dataValidation type="${type}" allowBlank="0" showInputMessage="1" showErrorMessage="1" errorTitle="${escapedForXml(title)}" error="${escapedForXml(says)}" promptTitle="${escapedForXml(title)}" prompt="${escapedForXml(says)}" sqref="${at}"><formula1>${escapedForXml(formula)}</formula1></dataValidation>`,
  );
  const validations =
    rules.length === 0 ? "" : `<dataValidations count="${String(rules.length)}">${rules.join("")}</dataValidations>`;
  const notes = sheet.notes.length === 0 ? "" : '<legacyDrawing r:id="rId1"/>';
  const page = '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>';
  return part(
    `<worksheet xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView workbookViewId="0" showGridLines="0"/></sheetViews><cols>${columns.join("")}</cols><sheetData>${rowsXml(sheet, styles)}</sheetData>${liveLooks.join("")}${validations}${page}<pageSetup orientation="landscape" fitToWidth="1" fitToHeight="0"/>${notes}</worksheet>`,
  );
}
