import type { Source } from "../formula/index.js";

/** One line of a working: the formula, the numbers in it, and what they come to. */
export interface WorkingStep {
  readonly name: string;
  readonly formula: string;
  readonly numbers: string;
  readonly sign: "=" | "≈";
  readonly value: string;
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

/** Whether this is what `explain` gives. */
export function isWorking(thing: unknown): thing is Working {
  return typeof thing === "object" && thing !== null && Object.hasOwn(thing, "steps");
}
