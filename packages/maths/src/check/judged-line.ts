import type { Unit } from "../engine/quantity/index.js";

/** One line of a working written by hand, judged from the lines above it as they were written. */
export interface JudgedLine {
  readonly line: string;
  readonly written: string;
  /**
   * "right, lines rounded" where figures above were rounded; "right from the figure above" where one was wrong and this line did
   * right by it; "right, rounded up" where the formula's answer is one that is cut, wound or bought.
   */
  readonly verdict: "right" | "right, lines rounded" | "right from the figure above" | "right, rounded up" | "wrong";
  /** The unit the figure was judged in: its symbol, "%" for a ratio written so, empty for a plain number. */
  readonly unit: string;
  /** What the line comes to from the figures above it, to the digits written. */
  readonly rounded: string;
  /** What was done, where the figures bear it out; only a wrong line has any. */
  readonly slips: readonly string[];
  /** Marks earned for the line, where the teacher set any. */
  readonly marks: number;
}

/** What a teacher allows and gives marks for. */
export interface LineOptions {
  /** The unit the answer was asked in. */
  readonly unit?: Unit<string> | null;
  /** Marks of a line for its method, its value and the unit written with it. */
  readonly marks?: { readonly method: number; readonly value: number; readonly unit: number };
  /** The language figures are written in, for the decimal comma. */
  readonly locale?: string;
}

export type WrittenLine = string | readonly [written: string, unit: Unit<string> | null];
