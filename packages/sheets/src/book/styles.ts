import type { BookCell, LiveLook, Look } from "./book.js";
import { part } from "./xml.js";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

const TEXT = 49;
const [PLACES, NOTHING] = [164, 165];
const FORMATS = [
  `<numFmt numFmtId="${String(PLACES)}" formatCode="0.000"/>`,
  `<numFmt numFmtId="${String(NOTHING)}" formatCode=";;;"/>`,
];

function formatOf({ shows }: Look): number {
  return shows === undefined ? 0 : shows === "nothing" ? NOTHING : PLACES;
}

/** Whether a program might take text for a formula when somebody edits its cell. */
function looksLikeFormula({ content }: BookCell): boolean {
  return "text" in content && /^[=+\-@\t\r]/u.test(content.text);
}

/** The looks of a workbook, each written once, and the number of each cell's. */
export interface Styles {
  readonly xml: string;
  numberOf(cell: BookCell): number;
  /** Of a look that cells take while a formula is true. */
  numberOfLive(look: Look): number;
}

function fontXml({ bold, large, colour }: Look): string {
  const size = large === true ? 15 : 11;
  const weight = bold === true ? "<b/>" : "";
  return `<font>${weight}<sz val="${String(size)}"/><color rgb="FF${colour ?? "000000"}"/><name val="Liberation Sans"/><family val="2"/></font>`;
}

function fillXml({ fill }: Look): string {
  if (fill === undefined) return "";
  return `<fill><patternFill patternType="solid"><fgColor rgb="FF${fill}"/><bgColor indexed="64"/></patternFill></fill>`;
}

/** A look laid over another: only what it says itself. */
function liveXml({ colour, fill }: Look): string {
  const font = colour === undefined ? "" : `<font><color rgb="FF${colour}"/></font>`;
  // Unlike a cell's own fill, this one is painted in its background colour.
  const ground = fill === undefined ? "" : `<fill><patternFill><bgColor rgb="FF${fill}"/></patternFill></fill>`;
  return `<dxf>${font}${ground}</dxf>`;
}

/** Collects the looks in the order in which cells first use them. */
export function stylesOf(cells: readonly BookCell[], liveLooks: readonly LiveLook[]): Styles {
  const keyOf = (cell: BookCell): string => JSON.stringify([cell.look, looksLikeFormula(cell)]);
  const numbers = new Map<string, number>();
  const fonts = [fontXml({})];
  const fills = ['<fill><patternFill patternType="none"/></fill>', '<fill><patternFill patternType="gray125"/></fill>'];
  const numbered = (list: string[], xml: string): number => {
    if (xml === "") return 0;
    return list.includes(xml) ? list.indexOf(xml) : list.push(xml) - 1;
  };
  const xfs = ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>'];
  for (const cell of cells) {
    const key = keyOf(cell);
    if (numbers.has(key)) continue;
    const font = numbered(fonts, fontXml(cell.look));
    const fill = numbered(fills, fillXml(cell.look));
    const quoted = looksLikeFormula(cell) ? ' quotePrefix="1"' : "";
    const format = looksLikeFormula(cell) ? TEXT : formatOf(cell.look);
    const wrap = cell.look.wrap === true ? ' wrapText="1"' : "";
    const indent = cell.look.indent === true ? ' horizontal="left" indent="1"' : "";
    const xf = `<xf numFmtId="${String(format)}" fontId="${String(font)}" fillId="${String(fill)}" borderId="0" xfId="0"${quoted} applyNumberFormat="1" applyFont="1" applyFill="1" applyAlignment="1"><alignment vertical="top"${indent}${wrap}/></xf>`;
    numbers.set(key, xfs.push(xf) - 1);
  }
  const live = [...new Set(liveLooks.map(({ look }) => liveXml(look)))];
  const list = (tag: string, items: readonly string[]): string =>
    `<${tag} count="${String(items.length)}">${items.join("")}</${tag}>`;
  const xml = part(
    `<styleSheet xmlns="${MAIN}">${list("numFmts", FORMATS)}${list("fonts", fonts)}${list("fills", fills)}${list("borders", ["<border><left/><right/><top/><bottom/><diagonal/></border>"])}${list("cellStyleXfs", ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>'])}${list("cellXfs", xfs)}${list("cellStyles", ['<cellStyle name="Normal" xfId="0" builtinId="0"/>'])}${list("dxfs", live)}</styleSheet>`,
  );
  return {
    xml,
    numberOf: (cell) => numbers.get(keyOf(cell)) ?? 0,
    numberOfLive: (look) => live.indexOf(liveXml(look)),
  };
}
