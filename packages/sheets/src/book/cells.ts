import type { BookCell, Look } from "./book.js";

/** A cell with text in it. */
export function textCell(at: string, text: string, look: Look): BookCell {
  return { at, content: { text }, look };
}

/** A cell with a formula in it, and the value it has now; null leaves that to the program. */
export function formulaCell(at: string, formula: string, now: number | string | null, look: Look): BookCell {
  return { at, content: { formula, now }, look };
}

/** The row of headings of a table. */
export function headings(row: number, texts: readonly string[]): readonly BookCell[] {
  return texts.map((text, at) =>
    textCell(`${"ABCDEFGH"[at] ?? "A"}${String(row)}`, text, { bold: true, fill: "E7E2D8" }),
  );
}

/** What a reader may change is yellow, what is worked out is not. */
export const INPUT: Look = { fill: "FFF6CC" };
export const ANSWER: Look = { bold: true, fill: "DDEBDD" };
export const PLAIN: Look = {};
export const WRAPPED: Look = { wrap: true };
export const WARNING: Look = { colour: "B00020", bold: true, wrap: true };
export const TITLE: Look = { bold: true, large: true };
