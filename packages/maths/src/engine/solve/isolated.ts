import { namesIn } from "../formula/index.js";
import type { Operator, Tree, Unary } from "../formula/index.js";
import { isolatedFromTwo } from "./isolated-from-two.js";

/** What a name comes to once the tree is turned round, or why it cannot be. */
export type Isolated = { readonly ok: true; readonly tree: Tree } | { readonly ok: false; readonly why: string };

const INVERSE: Readonly<Record<Operator, Operator>> = { "+": "−", "−": "+", "×": "÷", "÷": "×" };

const ROUNDED = "it stands under a rounding, where many give one answer";
const WHY_NOT: Readonly<Record<Exclude<Unary, "√">, string>> = {
  Σ: "it stands in a sum over a list",
  orNothing: "where the answer is nothing, many give it",
  roundUp: ROUNDED,
  roundDown: ROUNDED,
  nearest: ROUNDED,
};

function isSquare({ left, right }: { readonly left: Tree; readonly right: Tree }): boolean {
  return JSON.stringify(left) === JSON.stringify(right);
}

/** The equation `known = tree` solved for a name: what stands round it goes over to the other side, from the outside in. */
export function isolated(tree: Tree, name: string, known: Tree): Isolated {
  if (tree.op === "number" || tree.op === "name") return { ok: true, tree: known };
  if ("of" in tree) {
    if (tree.op === "√") return isolated(tree.of, name, { op: "×", left: known, right: known });
    return { ok: false, why: WHY_NOT[tree.op] };
  }
  const { op, left, right } = tree;
  if (!namesIn(right).includes(name)) return isolated(left, name, { op: INVERSE[op], left: known, right });
  if (!namesIn(left).includes(name)) {
    const turned: Tree =
      op === "+" || op === "×" ? { op: INVERSE[op], left: known, right: left } : { op, left, right: known };
    return isolated(right, name, turned);
  }
  if (op === "×" && isSquare(tree)) return isolated(left, name, { op: "√", of: known });
  return isolatedFromTwo(tree, name, known);
}
