import { formulaStyle, treeText } from "../formula/index.js";
import type { Read, Run, Tree } from "../formula/index.js";
import { inWords } from "../working/index.js";

/** One place of one line changed. */
export interface Change {
  readonly says: () => string;
  readonly rank: number;
  readonly tree: Tree;
  /** Set where many pages teach the sum so: where a question states no base it is no slip. */
  readonly convention?: boolean;
}

/** What the slips of one line may look at. */
export interface Scene {
  readonly worked: Run;
  /** The bracket behind a name, so that it can go wrong at either side. */
  readonly opened: (tree: Tree) => Tree;
}

export const ONE: Tree = { op: "number", text: "1" };

export const named = (name: string): Tree => ({ op: "name", name });

export const joined = (left: Tree, op: "+" | "−" | "×" | "÷", right: Tree): Tree => ({ op, left, right });

export function words(tree: Tree): string {
  return treeText(tree, formulaStyle(inWords));
}

/** The percentages of one base in `1 − loss` or `1 + added + added`; none for any other tree. */
export function percentagesIn(tree: Tree, inputs: ReadonlyMap<string, Read>): readonly string[] {
  if (tree.op !== "−" && tree.op !== "+") return [];
  const wanted = tree.op === "−" ? "loss" : "addition";
  const read = tree.right.op === "name" ? inputs.get(tree.right.name) : undefined;
  if (read?.what !== "quantity" || read.unit.dimension !== wanted) return [];
  const own = [(tree.right as { readonly name: string }).name];
  if (tree.left.op === "number" && tree.left.text === "1") return own;
  const before = tree.op === "+" ? percentagesIn(tree.left, inputs) : [];
  return before.length === 0 ? [] : [...before, ...own];
}

/** "the 10 % of take-up", and the same of several. */
export function percentText(names: readonly string[], inputs: ReadonlyMap<string, Read>): string {
  const each = names.map((name) => {
    const read = inputs.get(name);
    return read?.what === "quantity" ? `${read.value.toString()} % of ${inWords(name)}` : inWords(name);
  });
  return `the ${each.join(" and the ")}`;
}
