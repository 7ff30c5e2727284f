import { Decimal, rounded } from "../numbers.js";
import type { Line, Operator, Tree } from "./tree.js";

export type Value = Decimal | readonly Decimal[];

const APPLY: Readonly<Record<Operator, (a: Decimal, b: Decimal) => Decimal>> = {
  "+": (a, b) => a.plus(b),
  "−": (a, b) => a.minus(b),
  "×": (a, b) => a.times(b),
  "÷": (a, b) => a.div(b),
};

function isList(value: Value): value is readonly Decimal[] {
  return Array.isArray(value);
}

function both(a: Value, b: Value, apply: (a: Decimal, b: Decimal) => Decimal): Value {
  if (isList(a)) return a.map((x, at) => apply(x, isList(b) ? (b[at] ?? new Decimal(Number.NaN)) : b));
  return isList(b) ? b.map((y) => apply(a, y)) : apply(a, b);
}

const constants = /* @__PURE__ */ new WeakMap<Tree, Decimal>();

/** A number of a formula, read once. */
function constant(tree: Tree & { readonly op: "number" }): Decimal {
  let value = constants.get(tree);
  if (value === undefined) constants.set(tree, (value = new Decimal(tree.text)));
  return value;
}

/** What is there of an amount: nothing where it would be less. */
function orNothing(x: Decimal): Decimal {
  return x.isNegative() ? new Decimal(0) : x;
}

/** The value of a tree; lists go through it member by member until Σ adds them. */
export function valueOf(tree: Tree, known: ReadonlyMap<string, Value>, nearness: string): Value {
  if (tree.op === "number") return constant(tree);
  if (tree.op === "name") {
    const value = known.get(tree.name);
    if (value === undefined) throw new ReferenceError(`the formula has no ${tree.name}`);
    return value;
  }
  if (!("of" in tree)) {
    return both(valueOf(tree.left, known, nearness), valueOf(tree.right, known, nearness), APPLY[tree.op]);
  }
  const { op } = tree;
  const inside = valueOf(tree.of, known, nearness);
  if (op === "Σ") return isList(inside) ? inside.reduce((total, x) => total.plus(x), new Decimal(0)) : inside;
  const each = (x: Decimal): Decimal => {
    if (op === "orNothing") return orNothing(x);
    return op === "√" ? x.sqrt() : rounded(x, op, nearness);
  };
  return isList(inside) ? inside.map(each) : each(inside);
}

/** One line worked out. */
export interface Step {
  readonly name: string;
  readonly tree: Tree;
  readonly value: Value;
}

/** Works out every line from those above it; null for the first line that has no finite value. */
export function stepsOf(
  lines: readonly Line[],
  inputs: ReadonlyMap<string, Value>,
  nearness: string,
): { readonly steps: readonly Step[]; readonly failed: string | null } {
  const known = new Map(inputs);
  const steps: Step[] = [];
  for (const { name, tree } of lines) {
    const value = valueOf(tree, known, nearness);
    const finite = isList(value) ? value.every((x) => x.isFinite()) : value.isFinite();
    if (!finite) return { steps, failed: name };
    known.set(name, value);
    steps.push({ name, tree, value });
  }
  return { steps, failed: null };
}
