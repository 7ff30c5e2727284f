import type { Source, Tree } from "../formula/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import type { Amounts } from "./amounts.js";

/** One line of a working: the formula, the numbers in it, and what they come to. */
export interface WorkingStep {
  /** The line's own name in the formula, and that name in words. */
  readonly key: string;
  readonly name: string;
  readonly formula: string;
  readonly numbers: string;
  readonly sign: "=" | "≈";
  readonly value: string;
  /** What the value is counted in; empty for a plain number. */
  readonly unit: string;
  /** The line as data, its leaves the keys of inputs and lines above. */
  readonly tree: Tree;
  /** What it comes to as decimal texts, counted in `unit`: one, or one for each member of a list. */
  readonly values: readonly string[];
  /** What a rounding was made from, as `values` are; null where the line does not round. */
  readonly unrounded: string | null;
}

/** A whole working as data; the printers write it out. */
export interface Working {
  readonly name: string;
  readonly inputs: readonly WorkingInput[];
  readonly conversions: readonly { readonly name: string; readonly text: string }[];
  readonly steps: readonly WorkingStep[];
  /** What each name of the formula stands for in the lines of numbers, inputs in the unit of work; lists member by member. */
  readonly amounts: Amounts;
  readonly result: { readonly sign: "=" | "≈"; readonly value: string };
  /** The answer itself, as the calculation gives it or in the unit asked for. */
  readonly answer: Quantity<string> | number;
  readonly source: Source;
}

/** An input as a working tells it. */
export interface WorkingInput {
  /** Its field, and that field in words. */
  readonly key: string;
  readonly name: string;
  readonly value: string;
  readonly meaning: string;
}

/** How the result of a working is told. */
export interface ExplainOptions<D extends string = string> {
  /** The unit of the result; its own where none is named. */
  readonly unit?: Unit<D>;
  /** The figures it is told in, six where nothing else is asked for. */
  readonly digits?: number;
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
