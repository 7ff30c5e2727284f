/** Text that HTML and MathML take as it is. */
export function escaped(text: string): string {
  return text.replace(/[&<>"]/gu, (mark) => `&#${String(mark.codePointAt(0))};`);
}
