// A sound working as a careful pupil writes it: every step to so many figures, from the figures written above it.
import type { Declared } from "@thrum/maths";
import { run } from "../../../packages/maths/src/engine/formula/index.js";

type Tree = Declared["lines"][number]["tree"];
type Value = number | readonly number[];

const APPLY = {
  "+": (a: number, b: number): number => a + b,
  "−": (a: number, b: number): number => a - b,
  "×": (a: number, b: number): number => a * b,
  "÷": (a: number, b: number): number => a / b,
} as const;

function toFigures(x: number, figures: number): number {
  return x === 0 || !Number.isFinite(x) ? x : Number(x.toPrecision(figures));
}

const each = (value: Value, change: (x: number) => number): Value =>
  typeof value === "number" ? change(value) : value.map(change);

/** The answer of a working whose steps are rounded, as the last line counts it; whether the lines alone are, or every step. */
export function roundedWorking(
  declared: Declared,
  input: unknown,
  figures: number,
  steps: "lines" | "every step",
): number {
  const known = new Map<string, Value>();
  for (const [name, value] of run(declared, input).values)
    known.set(name, Array.isArray(value) ? value.map(Number) : Number(value));
  const kept = (value: Value): Value => (steps === "lines" ? value : each(value, (x) => toFigures(x, figures)));
  const valueOf = (tree: Tree): Value => {
    if (tree.op === "number") return Number(tree.text);
    if (tree.op === "name") return known.get(tree.name) ?? Number.NaN;
    if ("of" in tree) {
      const inside = valueOf(tree.of);
      if (tree.op === "Σ") return typeof inside === "number" ? inside : inside.reduce((a, b) => a + b, 0);
      const how = {
        "√": Math.sqrt,
        roundUp: (x: number) => Math.ceil(x - 1e-9),
        roundDown: (x: number) => Math.floor(x + 1e-9),
        nearest: Math.round,
        orNothing: (x: number) => Math.max(0, x),
      };
      return kept(each(inside, how[tree.op]));
    }
    const [a, b] = [valueOf(tree.left), valueOf(tree.right)];
    const apply = APPLY[tree.op];
    if (typeof a !== "number")
      return kept(a.map((x, at) => apply(x, typeof b === "number" ? b : (b[at] ?? Number.NaN))));
    return kept(each(b, (y) => apply(a, y)));
  };
  let last: Value = Number.NaN;
  const end = declared.lines.length - 1;
  for (const [at, { name, tree }] of declared.lines.entries()) {
    last = valueOf(tree);
    if (at < end) last = each(last, (x) => toFigures(x, figures));
    known.set(name, last);
  }
  return typeof last === "number" ? last : Number.NaN;
}
