import type { Operator, Tree, Unary } from "../formula/index.js";
import { PLAIN_STEP } from "../numbers.js";

/** Rows worked at a time: a block stays in the processor's cache. */
export const BLOCK = 1024;

type Block = Float64Array;

/** A node of the formula over one block: either a number for every row, or a block filled anew. */
export type Node = { readonly constant: number } | { readonly fill: (rows: number) => Block };

const NEARNESS = Number(PLAIN_STEP);

/** Halves up, residues of doubles on the whole number they are meant to be. */
function onWhole(x: number): number {
  const near = Math.round(x);
  return Math.abs(x - near) <= NEARNESS * Math.max(1, Math.abs(x)) ? near : x;
}

const SCALAR: Readonly<Record<Operator, (a: number, b: number) => number>> = {
  "+": (a, b) => a + b,
  "−": (a, b) => a - b,
  "×": (a, b) => a * b,
  "÷": (a, b) => a / b,
};

type Loop = (out: Block, a: Block, b: Block, x: number, rows: number) => void;

/** One tiny loop an operation and form, so that each stays fast however many formulas a page uses. */
const LOOPS: Readonly<Record<Operator, readonly [blocks: Loop, right: Loop, left: Loop]>> = {
  "+": [
    (out, a, b, _, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! + b[i]!;
    },
    (out, a, _b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! + x;
    },
    (out, _a, b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = x + b[i]!;
    },
  ],
  "−": [
    (out, a, b, _, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! - b[i]!;
    },
    (out, a, _b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! - x;
    },
    (out, _a, b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = x - b[i]!;
    },
  ],
  "×": [
    (out, a, b, _, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! * b[i]!;
    },
    (out, a, _b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! * x;
    },
    (out, _a, b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = x * b[i]!;
    },
  ],
  "÷": [
    (out, a, b, _, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! / b[i]!;
    },
    (out, a, _b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = a[i]! / x;
    },
    (out, _a, b, x, rows) => {
      for (let i = 0; i < rows; i++) out[i] = x / b[i]!;
    },
  ],
};

const UNARY: Readonly<Record<Exclude<Unary, "Σ">, (out: Block, a: Block, rows: number) => void>> = {
  "√": (out, a, rows) => {
    for (let i = 0; i < rows; i++) out[i] = Math.sqrt(a[i]!);
  },
  roundUp: (out, a, rows) => {
    for (let i = 0; i < rows; i++) out[i] = Math.ceil(onWhole(a[i]!));
  },
  roundDown: (out, a, rows) => {
    for (let i = 0; i < rows; i++) out[i] = Math.floor(onWhole(a[i]!));
  },
  orNothing: (out, a, rows) => {
    for (let i = 0; i < rows; i++) out[i] = a[i]! < 0 ? 0 : a[i]!;
  },
  nearest: (out, a, rows) => {
    for (let i = 0; i < rows; i++) out[i] = Math.floor(onWhole(2 * a[i]!) / 2 + 0.5);
  },
};

function filled(node: Node): ((rows: number) => Block) | null {
  return "fill" in node ? node.fill : null;
}

const none: Block = /* @__PURE__ */ new Float64Array(0);

/** Builds the nodes of a tree from the leaves up; `leaf` gives the node of an input. */
export function nodeOf(tree: Tree, leaf: (name: string) => Node): Node {
  if (tree.op === "number") return { constant: Number(tree.text) };
  if (tree.op === "name") return leaf(tree.name);
  const out = new Float64Array(BLOCK);
  if ("of" in tree) {
    if (tree.op === "Σ") throw new RangeError("a sum over a list has no column form");
    const inside = nodeOf(tree.of, leaf);
    const apply = UNARY[tree.op];
    const fill = filled(inside) ?? ((rows: number) => out.fill(constantOf(inside), 0, rows));
    return { fill: (rows) => (apply(out, fill(rows), rows), out) };
  }
  const [left, right] = [nodeOf(tree.left, leaf), nodeOf(tree.right, leaf)];
  const [a, b] = [filled(left), filled(right)];
  const [blocks, byNumber, ofNumber] = LOOPS[tree.op];
  if (a !== null && b !== null) return { fill: (rows) => (blocks(out, a(rows), b(rows), 0, rows), out) };
  if (a !== null) return { fill: (rows) => (byNumber(out, a(rows), none, constantOf(right), rows), out) };
  if (b !== null) return { fill: (rows) => (ofNumber(out, none, b(rows), constantOf(left), rows), out) };
  return { constant: SCALAR[tree.op](constantOf(left), constantOf(right)) };
}

function constantOf(node: Node): number {
  return "constant" in node ? node.constant : Number.NaN;
}
