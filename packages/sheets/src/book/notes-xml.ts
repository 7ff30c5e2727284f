import type { Note } from "./book.js";
import { placeOf } from "./sheet-xml.js";
import { escapedForXml, part } from "./xml.js";

/** The notes of a sheet. */
export function commentsXml(notes: readonly Note[]): string {
  const list = notes.map(
    ({ at, text }) =>
      `<comment ref="${at}" authorId="0"><text><r><t xml:space="preserve">${escapedForXml(text)}</t></r></text></comment>`,
  );
  return part(
    `<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>source</author></authors><commentList>${list.join("")}</commentList></comments>`,
  );
}

/** The boxes the notes are shown in: some programs show no note without one. */
export function notesDrawing(notes: readonly Note[]): string {
  const boxes = notes.map(({ at }, index) => {
    const { row, column } = placeOf(at);
    return `<v:shape id="_x0000_s${String(1025 + index)}" type="#_x0000_t202" style="position:absolute;width:240pt;height:80pt;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/><v:textbox/><x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${String(column)}, 15, ${String(row)}, 2, ${String(column + 3)}, 15, ${String(row + 5)}, 2</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${String(row - 1)}</x:Row><x:Column>${String(column - 1)}</x:Column></x:ClientData></v:shape>`;
  });
  return `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>${boxes.join("")}</xml>`;
}
