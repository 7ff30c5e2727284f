import type { Line, Tree, Value } from "../formula/index.js";

export type Rough = number | readonly number[];

/** A whole number within reach of a double's residue stays it: ten million ends are no weaver's. */
const NEAR = 1e-9;

const ROUNDED = {
  "√": Math.sqrt,
  roundUp: (x: number): number => Math.ceil(x - NEAR),
  roundDown: (x: number): number => Math.floor(x + NEAR),
  nearest: (x: number): number => Math.floor(x + 0.5 + NEAR),
} as const;

const APPLY = {
  "+": (a: number, b: number): number => a + b,
  "−": (a: number, b: number): number => a - b,
  "×": (a: number, b: number): number => a * b,
  "÷": (a: number, b: number): number => a / b,
} as const;

function isNumber(x: Rough): x is number {
  return typeof x === "number";
}

function roughValue(tree: Tree, known: ReadonlyMap<string, Rough>): Rough {
  if (tree.op === "number") return Number(tree.text);
  if (tree.op === "name") return known.get(tree.name) ?? Number.NaN;
  if ("of" in tree) {
    const inside = roughValue(tree.of, known);
    if (tree.op === "Σ") return isNumber(inside) ? inside : inside.reduce((a, b) => a + b, 0);
    return isNumber(inside) ? ROUNDED[tree.op](inside) : inside.map(ROUNDED[tree.op]);
  }
  const [a, b] = [roughValue(tree.left, known), roughValue(tree.right, known)];
  const apply = APPLY[tree.op];
  if (isNumber(a)) return isNumber(b) ? apply(a, b) : b.map((y) => apply(a, y));
  return a.map((x, at) => apply(x, isNumber(b) ? b : (b[at] ?? Number.NaN)));
}

/** Values as doubles, to look through a hundred slips before one is worked out exactly; `seen` keeps those turned once. */
export function roughly(
  values: ReadonlyMap<string, Value>,
  seen: Map<Value, Rough> = new Map<Value, Rough>(),
): ReadonlyMap<string, Rough> {
  const known = new Map<string, Rough>();
  for (const [name, value] of values) {
    const rough = seen.get(value) ?? ("toNumber" in value ? value.toNumber() : value.map((one) => one.toNumber()));
    seen.set(value, rough);
    known.set(name, rough);
  }
  return known;
}

/** Roughly what the last line comes to; not a number where that is none. */
export function roughAnswer(lines: readonly Line[], values: ReadonlyMap<string, Rough>): number {
  const known = new Map(values);
  let last: Rough = Number.NaN;
  for (const { name, tree } of lines) {
    last = roughValue(tree, known);
    known.set(name, last);
  }
  return isNumber(last) ? last : Number.NaN;
}
