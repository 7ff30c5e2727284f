const MARKS: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const LONGEST = 32_000;

/** Text as XML holds it: marks written out, what XML cannot hold replaced, the spreadsheet's own escapes kept literal. */
export function escapedForXml(text: string): string {
  if (text.length > LONGEST) throw new RangeError(`a cell holds ${String(LONGEST)} characters at most`);
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "\uFFFD")
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/gu, "_x005F_")
    .replace(/[&<>"]/gu, (mark) => MARKS[mark] ?? mark);
}

/** A part of the package with its XML heading. */
export function part(body: string): string {
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${body}`;
}
