import { declarationOf } from "../engine/formula/index.js";
import type { Declared, Input, Range } from "../engine/formula/index.js";
import { inWords } from "../engine/working/index.js";
import formulas from "./formulas.json" with { type: "json" };

/** A calculation or report function of the handbook, without the function itself. */
export interface FormulaEntry {
  /** The name it is exported by. */
  readonly name: string;
  /** A calculation has a declaration and all the uses; a report function gives findings or a list. */
  readonly what: "calculation" | "report";
  /** The part of the handbook: "yarn", "reed", "warp" … */
  readonly group: string;
  readonly title: string;
  /** What it does, in one sentence. */
  readonly says: string;
  /** Other words one may look for it by. */
  readonly alsoCalled: readonly string[];
}

/** One input of a calculation as a form wants it. */
export interface InputEntry {
  readonly key: string;
  /** The key as words: "finished length". */
  readonly label: string;
  readonly meaning: string;
  /** What may stand there: a quantity of a kind, a count of things, a number, a unit, or one of a few words. */
  readonly what: Exclude<Input<unknown>["what"], "list">;
  /** The kinds a quantity or unit may be of; none for anything else. */
  readonly kinds: readonly string[];
  /** Whether it is a list of such. */
  readonly isList: boolean;
  readonly words: readonly string[];
  readonly range: Range;
  /** As one writes it in a program: "inches(21)". */
  readonly example: string;
}

/** Every calculation and report function, by name; no formula is loaded for it. */
export const formulaEntries: readonly FormulaEntry[] = /* @__PURE__ */ formulas.map((entry) => ({
  ...entry,
  what: entry.what === "calculation" ? "calculation" : "report",
}));

/**
 * The inputs of a calculation, each with all that a form needs.
 *
 * @param calculation any calculation, one of solveFor among them
 * @throws QuantityError "wrong-kind" for what is no calculation
 * @example inputEntries(reedWidth).map(({ label }) => label) // ["ends", "sett"]
 */
export function inputEntries(calculation: { readonly declaration: Declared }): readonly InputEntry[] {
  return Object.entries(declarationOf("inputEntries", calculation).inputs).map(([key, input]) => {
    const { what, dimension, orDimension, words = [], range, meaning } = input.member ?? input;
    const isOfKind = what === "quantity" || what === "unit";
    return {
      key,
      label: inWords(key),
      meaning,
      what: what === "list" ? "quantity" : what,
      kinds: isOfKind ? [dimension, ...(orDimension === undefined ? [] : [orDimension])] : [],
      isList: input.member !== null,
      words,
      range,
      example: input.example,
    };
  });
}
