import { strToU8, zipSync } from "fflate";
import type { Book, Sheet } from "./book.js";
import { commentsXml, notesDrawing } from "./notes-xml.js";
import { sheetXml } from "./sheet-xml.js";
import { stylesOf } from "./styles.js";
import { escapedForXml, part } from "./xml.js";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";

function relations(targets: readonly (readonly [type: string, target: string])[]): string {
  const list = targets.map(
    ([type, target], at) => `<Relationship Id="rId${String(at + 1)}" Type="${OFFICE}/${type}" Target="${target}"/>`,
  );
  return part(`<Relationships xmlns="${RELATIONS}">${list.join("")}</Relationships>`);
}

function contentTypes(sheets: readonly Sheet[]): string {
  const overrides = [
    `<Override PartName="/xl/workbook.xml" ContentType="${TYPES}.sheet.main+xml"/>`,
    `<Override PartName="/xl/styles.xml" ContentType="${TYPES}.styles+xml"/>`,
    ...sheets.flatMap(({ notes }, at) => {
      const number = String(at + 1);
      const sheet = `<Override PartName="/xl/worksheets/sheet${number}.xml" ContentType="${TYPES}.worksheet+xml"/>`;
      const comments = `<Override PartName="/xl/comments${number}.xml" ContentType="${TYPES}.comments+xml"/>`;
      return notes.length === 0 ? [sheet] : [sheet, comments];
    }),
  ];
  const defaults =
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Default Extension="vml" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/>';
  return part(
    `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${defaults}${overrides.join("")}</Types>`,
  );
}

function workbookXml({ sheets, names }: Book): string {
  const list = sheets.map(
    ({ name }, at) => `<sheet name="${escapedForXml(name)}" sheetId="${String(at + 1)}" r:id="rId${String(at + 1)}"/>`,
  );
  const defined = [...names]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, where]) => `<definedName name="${escapedForXml(name)}">${escapedForXml(where)}</definedName>`);
  const definedNames = defined.length === 0 ? "" : `<definedNames>${defined.join("")}</definedNames>`;
  return part(
    `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${OFFICE}"><bookViews><workbookView/></bookViews><sheets>${list.join("")}</sheets>${definedNames}<calcPr calcId="191029" fullCalcOnLoad="1"/></workbook>`,
  );
}

/** The bytes of a workbook in the open standard for office files (ECMA-376), the same bytes for the same book. */
export function xlsxOf(book: Book): Uint8Array {
  const { sheets } = book;
  const styles = stylesOf(
    sheets.flatMap(({ cells }) => cells),
    sheets.flatMap(({ liveLooks }) => liveLooks),
  );
  const parts: (readonly [path: string, text: string])[] = [
    ["[Content_Types].xml", contentTypes(sheets)],
    ["_rels/.rels", relations([["officeDocument", "xl/workbook.xml"]])],
    ["xl/workbook.xml", workbookXml(book)],
    [
      "xl/_rels/workbook.xml.rels",
      relations([
        ...sheets.map((_, at) => ["worksheet", `worksheets/sheet${String(at + 1)}.xml`] as const),
        ["styles", "styles.xml"],
      ]),
    ],
    ["xl/styles.xml", styles.xml],
  ];
  for (const [at, sheet] of sheets.entries()) {
    const number = String(at + 1);
    parts.push([`xl/worksheets/sheet${number}.xml`, sheetXml(sheet, styles)]);
    if (sheet.notes.length === 0) continue;
    parts.push([
      `xl/worksheets/_rels/sheet${number}.xml.rels`,
      relations([
        ["vmlDrawing", `../drawings/notes${number}.vml`],
        ["comments", `../comments${number}.xml`],
      ]),
    ]);
    parts.push([`xl/comments${number}.xml`, commentsXml(sheet.notes)]);
    parts.push([`xl/drawings/notes${number}.vml`, notesDrawing(sheet.notes)]);
  }
  const files = Object.fromEntries(parts.map(([path, text]) => [path, strToU8(text)]));
  // One date for every file, so that the same book has the same bytes on every day and in every time zone.
  return zipSync(files, { level: 9, mtime: new Date(1980, 0, 1) });
}
