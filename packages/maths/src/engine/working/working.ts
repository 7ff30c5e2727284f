import type { Source } from "../formula/index.js";

/** One line of a working: the formula, the numbers in it, and what they come to. */
export interface WorkingStep {
  readonly name: string;
  readonly formula: string;
  readonly numbers: string;
  readonly sign: "=" | "≈";
  readonly value: string;
  /** What the value is counted in; empty for a plain number. */
  readonly unit: string;
}

/** A whole working as data; the printers write it out. */
export interface Working {
  readonly name: string;
  readonly inputs: readonly { readonly name: string; readonly value: string; readonly meaning: string }[];
  readonly conversions: readonly { readonly name: string; readonly text: string }[];
  readonly steps: readonly WorkingStep[];
  readonly result: { readonly sign: "=" | "≈"; readonly value: string };
  readonly source: Source;
}

/** What is told in sentences: a verdict, the question or the key of a problem. */
export interface Told {
  readonly says: readonly string[];
}

/** Whether this is told in sentences. */
export function isTold(thing: unknown): thing is Told {
  return typeof thing === "object" && thing !== null && "says" in thing && Array.isArray(thing.says);
}

/** Whether this is what `explain` gives. */
export function isWorking(thing: unknown): thing is Working {
  return typeof thing === "object" && thing !== null && Object.hasOwn(thing, "steps");
}

/** A line as it is printed: the name it belongs to, where it is the first, and what stands behind the sign. */
export interface PrintedLine {
  readonly name: string;
  readonly sign: "=" | "≈";
  readonly text: string;
}

/** The lines of a step: the formula, the numbers in it where they tell more, and the value. */
export function linesOf({ name, formula, numbers, sign, value }: WorkingStep): readonly PrintedLine[] {
  const more = numbers !== formula && numbers !== value;
  return [
    { name, sign: "=", text: formula },
    ...(more ? [{ name: "", sign: "=", text: numbers } as const] : []),
    { name: "", sign, text: value },
  ];
}

/** The result where it is told in another unit than the last line; null where it is the same. */
export function resultApart({ steps, result }: Working): Working["result"] | null {
  return steps.at(-1)?.value === result.value ? null : result;
}
