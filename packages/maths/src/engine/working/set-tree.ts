import type { Operator, Tree } from "../formula/index.js";

/** How a notation sets the parts of a line. */
export interface Notation {
  readonly number: (text: string) => string;
  readonly words: (text: string) => string;
  readonly sign: (text: string) => string;
  readonly row: (inside: string) => string;
  readonly fraction: (over: string, under: string) => string;
  readonly root: (inside: string) => string;
  /** What words stand off by from the number or bracket beside them. */
  readonly gap: string;
}

/** What stands in a fraction needs no bracket. */
const STRENGTH: Readonly<Record<Operator, number>> = { "÷": 0, "+": 1, "−": 1, "×": 2 };
const STRONGEST = 3;

/** A formula in two dimensions, `name` setting each of its names; sums and products of many stay flat, however long. */
export function setTree(tree: Tree, notation: Notation, name: (name: string) => string, weakest = 0): string {
  const { words, sign, row, gap } = notation;
  const bracketed = (inside: string): string => row(sign("(") + inside + sign(")"));
  if (tree.op === "number") return notation.number(tree.text);
  if (tree.op === "name") return name(tree.name);
  if ("of" in tree) {
    const inside = setTree(tree.of, notation, name, tree.op === "Σ" ? STRONGEST : 0);
    if (tree.op === "√") return notation.root(inside);
    if (tree.op === "Σ") return row(sign("Σ") + inside);
    const called = tree.op.replace(/[A-Z]/u, (letter) => ` ${letter.toLowerCase()}`);
    return row(words(called + gap) + bracketed(inside));
  }
  const own = STRENGTH[tree.op];
  const left = setTree(tree.left, notation, name, own);
  const right = setTree(tree.right, notation, name, tree.op === "−" ? own + 1 : own);
  if (tree.op === "÷") return notation.fraction(left, right);
  const inside = left + sign(tree.op) + right;
  return own < weakest ? bracketed(inside) : inside;
}

const AMOUNT = /^(≈ )?(\(−)?([\d.]+)\)?(?: (.+))?$/su;

/** Amounts as `amountsAt` gives them, each unit with its number; the members of a list stand side by side. */
export function setAmounts(amounts: readonly string[], { number, words, sign, row, gap }: Notation): string {
  const one = (text: string): string => {
    const [, about = "", minus = "", figure, unit = ""] = AMOUNT.exec(text) ?? [];
    if (figure === undefined) return words(text);
    const signed = minus === "" ? number(figure) : row(sign("(") + sign("−") + number(figure) + sign(")"));
    if (about + unit === "") return signed;
    return row((about && sign("≈")) + signed + (unit && words(gap + unit)));
  };
  return amounts.map(one).join(sign(","));
}
