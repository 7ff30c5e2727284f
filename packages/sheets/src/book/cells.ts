import type { BookCell, Look } from "./book.js";

/** A cell with text in it. */
export function textCell(at: string, text: string, look: Look): BookCell {
  return { at, content: { text }, look };
}

/** A cell with a formula in it, and the value it has now; null leaves that to the program. */
export function formulaCell(at: string, formula: string, now: number | string | null, look: Look): BookCell {
  return { at, content: { formula, now }, look };
}

/** The letters of a column, counted from 1: A, then Z, AA and so on. */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + ((column - 1) % 26));
  return column <= 26 ? letter : columnLetters(Math.floor((column - 1) / 26)) + letter;
}

/** The row of headings of a table. */
export function headings(row: number, texts: readonly string[]): readonly BookCell[] {
  return texts.map((text, at) => textCell(`${columnLetters(at + 1)}${String(row)}`, text, HEADING));
}

/** What a reader may change is yellow, what is worked out is not. */
export const INPUT: Look = { fill: "FFF6CC" };
export const ANSWER: Look = { bold: true, fill: "DDEBDD" };
export const ANSWER_UNIT: Look = { ...ANSWER, indent: true, wrap: true };
export const PLAIN: Look = {};
/** A unit, clear of the number before it. */
export const UNIT: Look = { wrap: true, indent: true };
export const WRAPPED: Look = { wrap: true };
/** A warning stands last on its line, as wide as it needs. */
export const WARNING: Look = { colour: "B00020", bold: true };
export const TITLE: Look = { bold: true, large: true };
/** For numbers that mean nothing while an input does not fit. */
export const DOUBTFUL: Look = { colour: "B00020" };
const HEADING: Look = { bold: true, fill: "E7E2D8" };
