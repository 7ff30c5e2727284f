import type { Line, Tree, Value } from "../formula/index.js";

export type Rough = number | readonly number[];

/** A whole number within reach of a double's residue stays it: ten million ends are no weaver's. */
const NEAR = 1e-9;

const ROUNDED = {
  "√": Math.sqrt,
  roundUp: (x: number): number => Math.ceil(x - NEAR),
  roundDown: (x: number): number => Math.floor(x + NEAR),
  nearest: (x: number): number => Math.floor(x + 0.5 + NEAR),
  orNothing: (x: number): number => (x < 0 ? 0 : x),
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

type Values = ReadonlyMap<string, Rough>;

function roughValue(tree: Tree, above: Values, values: Values): Rough {
  if (tree.op === "number") return Number(tree.text);
  if (tree.op === "name") return above.get(tree.name) ?? values.get(tree.name) ?? Number.NaN;
  if ("of" in tree) {
    const inside = roughValue(tree.of, above, values);
    if (tree.op === "Σ") return isNumber(inside) ? inside : inside.reduce((a, b) => a + b, 0);
    return isNumber(inside) ? ROUNDED[tree.op](inside) : inside.map(ROUNDED[tree.op]);
  }
  const a = roughValue(tree.left, above, values);
  const b = roughValue(tree.right, above, values);
  const apply = APPLY[tree.op];
  if (isNumber(a)) return isNumber(b) ? apply(a, b) : b.map((y) => apply(a, y));
  return a.map((x, at) => apply(x, isNumber(b) ? b : (b[at] ?? Number.NaN)));
}

/** Values as doubles, to look through a hundred slips before one is worked out exactly; `seen` keeps those turned once. */
export function roughly(values: ReadonlyMap<string, Value>, seen: Map<Value, Rough> = new Map<Value, Rough>()): Values {
  const known = new Map<string, Rough>();
  for (const [name, value] of values) {
    const rough = seen.get(value) ?? ("toNumber" in value ? value.toNumber() : value.map((one) => one.toNumber()));
    seen.set(value, rough);
    known.set(name, rough);
  }
  return known;
}

/** Roughly what the last line comes to; not a number where that is none. */
export function roughAnswer(lines: readonly Line[], values: Values): number {
  const above = new Map<string, Rough>();
  let last: Rough = Number.NaN;
  for (const { name, tree } of lines) {
    last = roughValue(tree, above, values);
    above.set(name, last);
  }
  return isNumber(last) ? last : Number.NaN;
}
