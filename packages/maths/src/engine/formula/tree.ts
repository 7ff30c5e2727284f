import type { Rounding } from "../numbers.js";

/** A formula as data. */
export type Tree =
  | { readonly op: "number"; readonly text: string }
  | { readonly op: "name"; readonly name: string }
  | { readonly op: Operator; readonly left: Tree; readonly right: Tree }
  | { readonly op: Unary; readonly of: Tree };

export type Operator = "+" | "−" | "×" | "÷";
export type Unary = "√" | "Σ" | "orNothing" | Rounding;

/** One line of a formula: a name and what it is. */
export interface Line {
  readonly name: string;
  readonly tree: Tree;
}

/** Every name a tree uses, in the order of reading. */
export function namesIn(tree: Tree): readonly string[] {
  if (tree.op === "name") return [tree.name];
  if (tree.op === "number") return [];
  return "of" in tree ? namesIn(tree.of) : [...namesIn(tree.left), ...namesIn(tree.right)];
}

/** The tree with every part for which `change` gives another; what it gives null for stays, its parts looked at in turn. */
function mapped(tree: Tree, change: (tree: Tree) => Tree | null): Tree {
  const own = change(tree);
  if (own !== null || tree.op === "number" || tree.op === "name") return own ?? tree;
  if ("of" in tree) return { op: tree.op, of: mapped(tree.of, change) };
  return { op: tree.op, left: mapped(tree.left, change), right: mapped(tree.right, change) };
}

/** The tree with every name replaced by what `replace` gives for it; a name it gives null for stays. */
export function withNames(tree: Tree, replace: (name: string) => Tree | null): Tree {
  return mapped(tree, (one) => (one.op === "name" ? replace(one.name) : null));
}

/** Every Σ written out as the sum it stands for; the members of a list of so many are named `counts[0]`, `counts[1]`. */
export function writtenOut(tree: Tree, sizes: ReadonlyMap<string, number>): Tree {
  return mapped(tree, (one) => {
    if (one.op !== "Σ") return null;
    const lists = namesIn(one.of).filter((name) => sizes.has(name));
    const most = Math.max(lists.length === 0 ? 1 : 0, ...lists.map((name) => sizes.get(name) ?? 1));
    if (most === 0) return { op: "number", text: "0" };
    const members = Array.from({ length: most }, (_, at) =>
      withNames(one.of, (name) => (sizes.has(name) ? { op: "name", name: `${name}[${String(at)}]` } : null)),
    );
    return members.reduce((left, right) => ({ op: "+", left, right }));
  });
}

/** All lines folded into the last, so that only inputs are left as names. */
export function folded(lines: readonly Line[]): Tree {
  const known = new Map<string, Tree>();
  let last: Tree = { op: "number", text: "0" };
  for (const { name, tree } of lines) {
    last = withNames(tree, (used) => known.get(used) ?? null);
    known.set(name, last);
  }
  return last;
}

const STRENGTH: Readonly<Record<Operator, number>> = { "+": 1, "−": 1, "×": 2, "÷": 2 };
const STRONGEST = 3;

/** How one printer writes the parts of a tree. */
export interface TreeStyle {
  number(text: string): string;
  name(name: string): string;
  unary(op: Unary, inside: string): string;
  readonly operators: Readonly<Record<Operator, string>>;
}

/** A tree as one line of text with no bracket more than it needs. */
export function treeText(tree: Tree, style: TreeStyle): string {
  const bracketed = (inner: Tree, weakest: number): string => {
    const text = treeText(inner, style);
    return "left" in inner && STRENGTH[inner.op] < weakest ? `(${text})` : text;
  };
  if (tree.op === "number") return style.number(tree.text);
  if (tree.op === "name") return style.name(tree.name);
  if ("of" in tree) return style.unary(tree.op, treeText(tree.of, style));
  const strength = STRENGTH[tree.op];
  const right = tree.op === "−" || tree.op === "÷" ? Math.min(strength + 1, STRONGEST) : strength;
  return `${bracketed(tree.left, strength)}${style.operators[tree.op]}${bracketed(tree.right, right)}`;
}

const spaced: Readonly<Record<Operator, string>> = { "+": " + ", "−": " − ", "×": " × ", "÷": " ÷ " };

/** The notation formulas are written in; reading the text back gives the same tree. */
export function formulaStyle(name: (name: string) => string): TreeStyle {
  const unary = (op: Unary, inside: string): string => {
    const simple = op === "√" || op === "Σ";
    return simple && /^[\p{L}\p{N}.]+$/u.test(inside) ? `${op}${inside}` : `${op}(${inside})`;
  };
  return { number: (text) => text, name, unary, operators: spaced };
}
